import { momentOf } from './action.ts';
import type { Corner } from './corner.ts';
import { actionOf } from './load-cases.ts';
import { rotationForSteer, steered } from './steering.ts';

/**
 * Self-return: moment of both front wheel loads about their steering axes together, M(δ) − M(−δ), in N·m,
 * positive to the left. The other corner is the mirror image, so it does in a left turn what this one does in a
 * right turn, the other way round. Straight ahead it is nought.
 *
 * @param ahead one corner, straight ahead
 * @param load on each of the two wheels, in newtons, upward
 * @param steer δ of both wheels in radians, as for `rotationForSteer`
 * @throws RangeError as `rotationForSteer`
 */
export function selfReturn(ahead: Corner, load: number, steer: number): number {
  if (load === 0) return 0;
  const moment = (angle: number): number => {
    const corner = steered(ahead, rotationForSteer(ahead, angle));
    return momentOf(corner, actionOf(corner, { kind: 'vertical', force: load }));
  };
  return moment(steer) - moment(-steer);
}

/** The two offsets of an axis: in metres, positive when it passes inboard. */
export interface Offsets {
  /** Spindle offset q, at the height of the wheel centre. */
  readonly spindle: number;
  /** Scrub radius r, at the road. */
  readonly scrub: number;
}

/**
 * The offset with which a wheel load turns a steered wheel back, r + (q − r) cos δ, in metres: the spindle
 * offset at first, and toward the scrub radius as the wheel turns and leans. Exactly it is q − R tan γ, with the
 * camber γ of the turned wheel.
 *
 * @param steer δ in radians
 */
export const returningOffset = ({ spindle, scrub }: Offsets, steer: number): number =>
  scrub + (spindle - scrub) * Math.cos(steer);

/**
 * Self-return of one wheel by rule, M = −W (r + (q − r) cos δ) sin σ sin δ, in N·m, positive to the left. For
 * an upright wheel on an axis without caster; good to two hundredths up to 16° of inclination and 35° of steer.
 * Books print it with the offset at the ground alone, which holds for a contact point that is fixed in the
 * carrier. On a tyre the ground follows, and straight ahead it is the spindle offset.
 *
 * @param load W on the wheel in newtons
 * @param inclination σ in radians, positive when the axis top leans inboard
 * @param steer δ in radians, positive to the left
 *
 * Source: Barton and Fieldhouse, Automotive Chassis Engineering (2018), equations 2.18 to 2.20, p. 92, with the
 * offset of a wheel in its place (worked by hand).
 */
export const selfReturnByRule = (
  load: number,
  offsets: Offsets,
  inclination: number,
  steer: number,
): number => -load * returningOffset(offsets, steer) * Math.sin(inclination) * Math.sin(steer);
