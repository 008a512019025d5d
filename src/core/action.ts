import type { Corner, Side } from './corner.ts';
import { momentAbout } from './line.ts';
import { dot, type Vector } from './vector.ts';

/** What reaches the carrier: a force in newtons at a point in metres, and a couple in newton metres. */
export interface Action {
  readonly force: Vector;
  readonly point: Vector;
  readonly couple: Vector;
}

/** Which way a moment about the steering axis turns its wheel. */
export type Sense = 'toe-out' | 'toe-in' | 'none';

/** Below this a moment turns nothing: it is what rounding leaves of a sum that should be zero, in N·m. */
const NO_MOMENT = 1e-9;

/**
 * Moment about the steering axis, M = u·((B − L) × F) + u·T, in N·m.
 *
 * Positive is right-handed about the axis taken upward: the wheel turns to the left, whichever side it
 * is on. A couple has no point: wherever it enters the carrier, its moment is the same.
 */
export const momentOf = (
  { axis }: Pick<Corner, 'axis'>,
  { force, point, couple }: Action,
): number => momentAbout(axis, point, force) + dot(axis.direction, couple);

/**
 * The word for a moment about the steering axis: a wheel turned to the left toes out on the left side of
 * the car and in on the right.
 *
 * @param moment in N·m, positive to the left; below 1e-9 either way it is `none`
 */
export function senseOf(side: Side, moment: number): Sense {
  if (Math.abs(moment) < NO_MOMENT) return 'none';
  return moment > 0 === (side === 'left') ? 'toe-out' : 'toe-in';
}
