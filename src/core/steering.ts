import { contactCentre, heading, type Corner } from './corner.ts';
import { rotation, turned, turnedAbout } from './rotation.ts';
import type { Vector } from './vector.ts';

/**
 * The corner with its carrier turned about the steering axis by θ. The body stays: the axis and the
 * tie rod's inner end are where they were (the rod's length is then another matter, see rack-travel.ts).
 *
 * @param angle θ in radians about the upward axis; positive turns the wheel to the left, on both sides
 */
export function steered(corner: Corner, angle: number): Corner {
  if (angle === 0) return corner;
  const { side, axis, pivots, wheelCentre, spin, loadedRadius, tieRod } = corner;
  const by = rotation(axis.direction, angle);
  // Members one by one, since copying is slow; a corner that gains one has to say here whether it turns.
  return {
    side,
    axis,
    pivots,
    wheelCentre: turnedAbout(wheelCentre, axis.point, by),
    spin: turned(spin, by),
    loadedRadius,
    tieRod: tieRod && { outer: turnedAbout(tieRod.outer, axis.point, by), inner: tieRod.inner },
  } satisfies { readonly [Member in keyof Required<Corner>]: Corner[Member] };
}

/**
 * Road-wheel steer: how far the wheel's heading has turned in plan between two positions of one
 * corner, in radians; positive to the left.
 */
export const steerBetween = (ahead: Corner, now: Corner): number =>
  turnInPlan(heading(ahead), heading(now));

/** How far one level direction is turned from another, in radians; positive to the left. */
export const turnInPlan = (from: Vector, to: Vector): number =>
  Math.atan2(from.x * to.y - from.y * to.x, from.x * to.x + from.y * to.y);

/** Lift: how far the contact centre has moved down relative to the body, in metres; positive raises that corner of the car. */
export const liftBetween = (ahead: Corner, now: Corner): number =>
  contactCentre(ahead).z - contactCentre(now).z;

/**
 * The rotation θ about the steering axis that gives a wanted road-wheel steer, in radians, by
 * Newton's method on the heading. It differs from the steer by a few hundredths, since the axis leans.
 *
 * @param steer radians, within ±80°; positive to the left
 * @throws RangeError outside that range, or where no rotation up to a right angle gives that steer
 */
export function rotationForSteer(corner: Corner, steer: number): number {
  const most = (80 * Math.PI) / 180;
  if (!(Math.abs(steer) <= most))
    throw new RangeError(`steer ${steer} rad is outside ±${most} rad`);
  const step = 1e-6;
  let angle = steer;
  for (let round = 0; round < 30; round++) {
    const miss = steerBetween(corner, steered(corner, angle)) - steer;
    if (Math.abs(miss) < 1e-14) return angle;
    const slope =
      (steerBetween(corner, steered(corner, angle + step)) -
        steerBetween(corner, steered(corner, angle - step))) /
      (2 * step);
    const next = angle - miss / slope;
    if (next === angle) return angle;
    angle = next;
    if (!(Math.abs(angle) <= Math.PI / 2 + 0.2)) break;
  }
  const miss = Math.abs(steerBetween(corner, steered(corner, angle)) - steer);
  if (miss < 1e-9) return angle;
  throw new RangeError(`no rotation of this corner steers the wheel by ${steer} rad`);
}
