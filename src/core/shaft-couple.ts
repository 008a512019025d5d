import { outboardSign, type Corner } from './corner.ts';
import { direction, dot, plus, times, type Vector } from './vector.ts';

/** Whether a shaft direction leads from the car to the wheel: what `shaftCouple` asks for. */
export const pointsOutboard = ({ side }: Pick<Corner, 'side'>, { y }: Vector): boolean =>
  outboardSign(side) * y > 0;

/**
 * The couple that a constant-velocity joint hands to the carrier, T (s + a)/(1 + s·a), in N·m.
 *
 * The joint's balls lie in the plane that halves the angle between its two shafts, so the couple
 * stands at right angles to that plane and its part along the wheel's spin axis s is the torque T.
 *
 * @param torque T about the spin axis in N·m, positive when right-handed about s
 * @param shaft a, from the inner joint to the outer one, in vehicle axes; of any length, pointing outboard
 * @throws RangeError for a shaft that points inboard, straight along the car, or back along s
 *
 * Source: statics of a homokinetic joint (from memory).
 */
export function shaftCouple(
  { side, spin }: Pick<Corner, 'side' | 'spin'>,
  torque: number,
  shaft: Vector,
): Vector {
  const along = direction(shaft);
  const cosine = dot(spin, along);
  if (!pointsOutboard({ side }, along) || !(cosine > -1 + 1e-9)) {
    const { x, y, z } = shaft;
    throw new RangeError(
      `shaft direction (${x}, ${y}, ${z}) does not point outboard on the ${side}`,
    );
  }
  return times(torque / (1 + cosine), plus(spin, along));
}
