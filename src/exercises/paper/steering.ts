import { momentOf } from '#core/action.ts';
import type { Corner, TieRod } from '#core/corner.ts';
import { handwheelTorque } from '#core/handwheel.ts';
import { actionOf } from '#core/load-cases.ts';
import { rackSense, rodForce } from '#core/tie-rod.ts';
import { vector } from '#core/vector.ts';
import { cornerAtRoad } from './corner.ts';

/** Which way a steering arm points from the axis: 1 forward, with the rack ahead of it, −1 rearward. */
export type Forward = 1 | -1;

/** By how much a power steering divides the torque: a number that is written in words. */
export type Assist = keyof typeof ASSIST_WORDS;

const ASSIST_WORDS = { 3: 'three', 4: 'four', 5: 'five' } as const;

export const assistWord = (assist: Assist): string => ASSIST_WORDS[assist];

/** Where the rack of such an arm lies, read before `the axis`. */
export const rackPlace = (forward: Forward): string => (forward > 0 ? 'ahead of' : 'behind');

/** The tie rod of a left corner, seen from above: at an angle to the rack, in radians. Its length does not matter. */
export const rodAt = (angle: number, outer = vector(0, 0, 0)): TieRod => ({
  outer,
  inner: vector(outer.x - 0.35 * Math.sin(angle), outer.y - 0.35 * Math.cos(angle), outer.z),
});

/**
 * A left corner with an upright axis, and a tie rod straight across the car on its steering arm.
 *
 * @param lever shortest distance from the axis to the rod's line, in metres
 */
export function cornerOnRack(
  scrubRadius: number,
  lever: number,
  forward: Forward,
): Corner & { readonly tieRod: TieRod } {
  const corner = cornerAtRoad({ scrubRadius });
  const { x, y } = corner.axis.point;
  return { ...corner, tieRod: rodAt(0, vector(x + forward * lever, y, 0.2)) };
}

const senseOf = (forward: Forward): number => {
  const { axis, tieRod } = cornerOnRack(0, 0.1, forward);
  return rackSense(axis, tieRod);
};

/** Which way the rack of either arm goes when the wheels turn to the left: the lever's length does not matter. */
const SENSES: Readonly<Record<Forward, number>> = { [1]: senseOf(1), [-1]: senseOf(-1) };

/** Moment about the axis of a braking force of the tyre, with the brake on the carrier; in N·m, positive to the left. */
export const brakeMoment = (corner: Corner, force: number): number =>
  momentOf(corner, actionOf(corner, { kind: 'brake-on-carrier', force }));

/** Force in the rod that holds a moment, in newtons, tension positive. */
export function heldBy({ axis, tieRod }: ReturnType<typeof cornerOnRack>, moment: number): number {
  const held = rodForce(axis, tieRod, moment);
  if (held.ok) return held.value;
  throw new RangeError('a steering arm without a lever');
}

/** Torque in the driver's hands for a newton on the rack to the left, in N·m: positive turns the steering wheel left. */
export const torquePerNewton = (
  forward: Forward,
  gear: { readonly travelPerTurn: number; readonly assist: number },
): number => SENSES[forward] * handwheelTorque(1, gear);
