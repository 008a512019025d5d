import { success, type Outcome } from '../fault.ts';
import { loadFactors, type LoadFactors, type RowKind } from './factors.ts';

/** One row of a hub bearing, with the load factors of its contact angle looked up once. */
export interface Row {
  readonly kind: RowKind;
  /** Basic dynamic radial load rating C of this one row, in newtons. */
  readonly dynamicRating: number;
  /** Contact angle α, in radians. */
  readonly contactAngle: number;
  readonly factors: LoadFactors;
}

/**
 * A row from what a catalogue says of it.
 *
 * @param dynamicRating C of the single row in newtons, more than 0 (for a pair rated together: its C/1.62
 * with balls)
 * @param contactAngle α in radians; the range is that of `loadFactors`
 * @returns a fault with an empty path for a contact angle without load factors
 * @throws RangeError for a rating that is not a number above 0
 */
export function bearingRow(
  kind: RowKind,
  dynamicRating: number,
  contactAngle: number,
): Outcome<Row> {
  if (!(dynamicRating > 0 && dynamicRating < Infinity))
    throw new RangeError(`a dynamic rating of ${dynamicRating} N is not a number above 0`);
  const factors = loadFactors(kind, contactAngle);
  if (!factors.ok) return factors;
  return success({ kind, dynamicRating, contactAngle, factors: factors.value });
}
