import type { Corner } from './corner.ts';
import { failure, success, type Outcome } from './fault.ts';
import { cross, dot, minus } from './vector.ts';

const OUT_OF_REACH = {
  path: '',
  wrong: 'takes the tie rod’s ends too far apart, or too near to each other, for its length',
  allowed: 'positions that the rod can follow without changing its length',
};

/**
 * The rotation θ about the steering axis at which a corner’s tie rod has a given length, in radians, positive to
 * the left: where the carrier ends up on a rod that nobody has touched.
 *
 * With p = O − L, q = I − L and u along the axis, |O(θ) − I| = ℓ becomes
 * q·(p − u(u·p)) cos θ + q·(u × p) sin θ = (p² + q² − ℓ²)/2 − (q·u)(u·p). Of the two solutions the one nearer to
 * where the corner stands is taken.
 *
 * @param corner its rod’s inner end stays where it is
 * @param length ℓ in metres
 * @returns a fault with an empty path where the corner has no rod, or one that cannot reach
 */
export function angleForRod(
  { axis, tieRod }: Pick<Corner, 'axis' | 'tieRod'>,
  length: number,
): Outcome<number> {
  if (tieRod === undefined) return failure(OUT_OF_REACH);
  const { point, direction: u } = axis;
  const p = minus(tieRod.outer, point);
  const q = minus(tieRod.inner, point);
  const alongAxis = dot(q, u) * dot(u, p);
  const cosinePart = dot(q, p) - alongAxis;
  const sinePart = dot(q, cross(u, p));
  const wanted = (dot(p, p) + dot(q, q) - length ** 2) / 2 - alongAxis;
  const most = Math.hypot(cosinePart, sinePart);
  if (!(Math.abs(wanted) <= most)) return failure(OUT_OF_REACH);
  const middle = Math.atan2(sinePart, cosinePart);
  const opening = Math.acos(wanted / most);
  const [one, other] = [withinTurn(middle - opening), withinTurn(middle + opening)];
  return success(Math.abs(one) <= Math.abs(other) ? one : other);
}

/** The angle between −π and π in the same direction. */
const withinTurn = (angle: number): number => Math.atan2(Math.sin(angle), Math.cos(angle));
