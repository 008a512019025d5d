import type { TieRod } from './corner.ts';
import { failure, success, type Outcome } from './fault.ts';
import { momentAbout, type Line } from './line.ts';
import { direction, distance, minus, type Vector } from './vector.ts';

/** The shortest lever at which a tie rod still steers, in metres. Real cars have about 0.1. */
const LEAST_LEVER = 0.001;

export const rodLength = ({ outer, inner }: TieRod): number => distance(outer, inner);

/** Direction of a tie rod from its outer to its inner end, t = (I − O)/|I − O|. */
export const rodDirection = ({ outer, inner }: TieRod): Vector => direction(minus(inner, outer));

/** Lever of a tie rod about the steering axis, u·((O − L) × t), in metres: the moment of a tension of 1 N. */
export const rodLever = (axis: Line, rod: TieRod): number =>
  momentAbout(axis, rod.outer, rodDirection(rod));

/**
 * Force in a tie rod that holds a moment about the steering axis, from M + N u·((O − L) × t) = 0, in
 * newtons; tension is positive.
 *
 * @param moment M of everything else that acts on the carrier, in N·m, positive to the left
 * @returns a fault with an empty path where the rod's line passes the axis within 1 mm
 *
 * Source: statics of the carrier; its pivots take no moment about their own line.
 */
export function rodForce(axis: Line, rod: TieRod, moment: number): Outcome<number> {
  const lever = rodLever(axis, rod);
  if (Math.abs(lever) >= LEAST_LEVER) return success(-moment / lever);
  return failure({
    path: '',
    wrong: `leaves the tie rod a lever of ${Number((1000 * lever).toPrecision(3))} mm about the steering axis`,
    allowed: 'a lever of 1 mm or more, to either side',
  });
}

/**
 * Which way the rack goes when the wheel turns to the left: 1 to the left too, as with a rack ahead of the
 * axis, or −1 to the right, as with one behind it. Sign of the lever over t_y.
 *
 * The steering wheel turns with the road wheel either way, so its torque has the sign of the rack force times this.
 *
 * Source: equal work at both ends of the rod, F_rack ds = M dθ.
 */
export const rackSense = (axis: Line, rod: TieRod): 1 | -1 =>
  rodLever(axis, rod) * rodDirection(rod).y < 0 ? -1 : 1;

/**
 * Force of a tie rod on the rack, −N t_y, in newtons, positive toward the vehicle's left. The rest of the
 * rod's force goes into the rack's bush.
 *
 * @param force N in newtons, tension positive
 */
export const rackForce = (rod: TieRod, force: number): number => -force * rodDirection(rod).y;
