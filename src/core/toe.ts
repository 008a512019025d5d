import { angleForRod } from './angle-for-rod.ts';
import { outboardSign, type Corner } from './corner.ts';
import { success, type Outcome } from './fault.ts';
import { rotation, turned } from './rotation.ts';

/**
 * Toe of a wheel from its spin axis, tan ψ = ±s_x/s_y, in radians; positive for toe-in.
 *
 * Source of the sign: ISO 8855:2011, clause 7.1 (from memory).
 */
export const toeOf = ({ side, spin }: Pick<Corner, 'side' | 'spin'>): number =>
  Math.atan2(spin.x, outboardSign(side) * spin.y);

/**
 * Toe of a corner that a tie rod of a given length holds, in radians; positive for toe-in. After something
 * has moved or bent, that is what the wheel stands at until somebody sets the rod anew.
 *
 * @param length of the rod in metres
 * @returns a fault as in `angleForRod`
 */
export function toeOnRod(corner: Corner, length: number): Outcome<number> {
  const angle = angleForRod(corner, length);
  if (!angle.ok) return angle;
  const spin = turned(corner.spin, rotation(corner.axis.direction, angle.value));
  return success(toeOf({ side: corner.side, spin }));
}
