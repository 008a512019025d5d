import type { Corner } from './corner.ts';
import { liftBetween, rotationForSteer, steered } from './steering.ts';

/**
 * How far the middle of a car's front rises when both its wheels are steered alike, in metres:
 * (h(δ) + h(−δ))/2. The other corner is the mirror image, so it does in a left turn what this one does in a
 * right turn.
 *
 * @param ahead one corner, straight ahead
 * @param steer δ in radians, as for `rotationForSteer`
 * @throws RangeError as `rotationForSteer`
 */
export function frontLift(ahead: Corner, steer: number): number {
  const lift = (angle: number): number =>
    liftBetween(ahead, steered(ahead, rotationForSteer(ahead, angle)));
  return (lift(steer) + lift(-steer)) / 2;
}
