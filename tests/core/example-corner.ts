import type { Outcome } from '#core/fault.ts';
import { spinAxis, type Corner, type Pivots } from '#core/corner.ts';
import { lineThrough } from '#core/line.ts';
import { vector } from '#core/vector.ts';

const pivots: Pivots = { lower: vector(0, 0.62, 0.2), upper: vector(-0.03, 0.56, 0.75) };

/**
 * A left corner with round numbers, its ground at z = 0 while it stands straight ahead: the axis meets the
 * ground 58 mm inboard of and 11 mm ahead of the contact centre.
 */
export const EXAMPLE: Corner & { readonly pivots: Pivots } = {
  side: 'left',
  axis: lineThrough(pivots.lower, pivots.upper),
  pivots,
  wheelCentre: vector(0, 0.7, 0.31),
  spin: spinAxis('left', 0, 0),
  loadedRadius: 0.31,
  tieRod: { outer: vector(-0.12, 0.61, 0.215), inner: vector(-0.105, 0.33, 0.235) },
};

/** The value of an outcome that is known to have one. */
export function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.faults.map(({ path, wrong }) => `${path} ${wrong}`).join('\n'));
}
