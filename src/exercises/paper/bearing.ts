import { loadFactors, type LoadFactors } from '#core/bearing/factors.ts';
import { radialLoads, tiltingMoment, type Rows } from '#core/bearing/rows.ts';
import { si } from '../phrase.ts';

/** A wheel on its bearing as an exercise gives it: load line and spread, and what the ground does to the tyre. */
export interface OnBearing {
  readonly offset_mm: number;
  readonly spread_mm: number;
  readonly load_N: number;
  /** Positive toward the car. */
  readonly inward_N?: number;
  readonly radius_mm?: number;
}

const spacingOf = ({ offset_mm, spread_mm }: OnBearing) => ({
  loadLineOffset: si(offset_mm, 'mm'),
  spread: si(spread_mm, 'mm'),
});

const loadOf = ({ load_N, inward_N = 0 }: OnBearing) => ({ vertical: load_N, inward: inward_N });

/** A side force needs its radius; without one any radius does. */
const radiusOf = ({ radius_mm = 300 }: OnBearing): number => si(radius_mm, 'mm');

/** Radial loads of both rows, in newtons; negative at the bottom. */
export const rowLoads = (on: OnBearing): Rows<number> =>
  radialLoads(spacingOf(on), loadOf(on), radiusOf(on));

/** Moment that tips the wheel on its rows, in N·m, positive top inboard. */
export const tiltOn = (on: OnBearing): number =>
  tiltingMoment(spacingOf(on), loadOf(on), radiusOf(on));

/** Load factors of a ball row whose contact angle the table has. */
export function ballFactors(contactAngle_deg: number): LoadFactors {
  const known = FACTORS.get(contactAngle_deg);
  if (known) return known;
  const factors = loadFactors('ball', si(contactAngle_deg, 'deg'));
  if (!factors.ok) throw new RangeError(`no load factors for ${contactAngle_deg} degrees`);
  FACTORS.set(contactAngle_deg, factors.value);
  return factors.value;
}

/** What the table said before: exercises keep to a few of its angles. */
const FACTORS = new Map<number, LoadFactors>();

/** A wheel in a turn: the outer one is pushed toward the car, the inner one away from it. */
export type InTurn = 'outer' | 'inner';

/** A side force of that size, positive toward the car. */
export const inward = (which: InTurn, side_N: number): number =>
  which === 'outer' ? side_N : -side_N;

/** Where the road pushes the tyre of such a wheel, in words. */
export const sideWords = (which: InTurn): string =>
  which === 'outer' ? 'toward the car' : 'away from the car';
