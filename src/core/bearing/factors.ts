import { degrees, radians } from '../angle.ts';
import { failure, success, type Outcome } from '../fault.ts';

/** A row of balls in angular contact, or of tapered rollers. */
export type RowKind = 'ball' | 'roller';

/** ISO 281's factors of one row: its equivalent load is F_r up to F_a = e F_r, X F_r + Y F_a above. */
export interface LoadFactors {
  /** Limit of F_a/F_r up to which the thrust does not count. */
  readonly e: number;
  /** Radial load factor. */
  readonly X: number;
  /** Axial load factor. */
  readonly Y: number;
}

/** ISO 281:2007, Table 3: angular contact ball bearings, single row (from memory). */
const BALL_TABLE = [
  { contactAngle: radians(20), e: 0.57, X: 0.43, Y: 1.0 },
  { contactAngle: radians(25), e: 0.68, X: 0.41, Y: 0.87 },
  { contactAngle: radians(30), e: 0.8, X: 0.39, Y: 0.76 },
  { contactAngle: radians(35), e: 0.95, X: 0.37, Y: 0.66 },
  { contactAngle: radians(40), e: 1.14, X: 0.35, Y: 0.57 },
  { contactAngle: radians(45), e: 1.34, X: 0.33, Y: 0.5 },
] as const satisfies readonly (LoadFactors & { readonly contactAngle: number })[];

/** A radial bearing's contact angle ends here (ISO 281, scope). */
const STEEPEST = radians(45);

/** What rounding may have added to an angle that was typed as 20 or 45 degrees. */
const ROUNDING = 1e-9;

/**
 * The load factors of a row for its contact angle: for balls ISO 281's single-row table, linear between
 * its lines; for tapered rollers e = 1.5 tan α, X = 0.4, Y = 0.4 cot α.
 *
 * @param contactAngle α in radians: 20° to 45° for balls, above 0° to 45° for tapered rollers
 * @returns a fault with an empty path outside that range, for the caller to put the place before it
 *
 * Source: ISO 281:2007, Tables 3 and 9 (from memory).
 */
export function loadFactors(kind: RowKind, contactAngle: number): Outcome<LoadFactors> {
  const factors = kind === 'ball' ? ballFactors(contactAngle) : rollerFactors(contactAngle);
  if (factors !== undefined) return success(factors);
  return failure({
    path: '',
    wrong: `is ${Number(degrees(contactAngle).toPrecision(12))} degrees`,
    allowed:
      kind === 'ball'
        ? 'a contact angle from 20 to 45 degrees in a ball row'
        : 'a contact angle above 0 and up to 45 degrees in a tapered roller row',
  });
}

function ballFactors(contactAngle: number): LoadFactors | undefined {
  const place = BALL_TABLE.findIndex((line) => contactAngle <= line.contactAngle + ROUNDING);
  const upper = BALL_TABLE[place];
  if (upper === undefined) return undefined;
  const lower = BALL_TABLE[place - 1];
  if (lower === undefined)
    return contactAngle >= upper.contactAngle - ROUNDING ? factorsOf(upper) : undefined;
  const part = (contactAngle - lower.contactAngle) / (upper.contactAngle - lower.contactAngle);
  const between = (from: number, to: number): number => (1 - part) * from + part * to;
  return {
    e: between(lower.e, upper.e),
    X: between(lower.X, upper.X),
    Y: between(lower.Y, upper.Y),
  };
}

const factorsOf = ({ e, X, Y }: LoadFactors): LoadFactors => ({ e, X, Y });

function rollerFactors(contactAngle: number): LoadFactors | undefined {
  if (!(contactAngle > 0 && contactAngle <= STEEPEST + ROUNDING)) return undefined;
  const tangent = Math.tan(contactAngle);
  return { e: 1.5 * tangent, X: 0.4, Y: 0.4 / tangent };
}
