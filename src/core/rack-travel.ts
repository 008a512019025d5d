import type { Corner, TieRod } from './corner.ts';
import { failure, success, type Outcome } from './fault.ts';
import { steered } from './steering.ts';
import { rodLength } from './tie-rod.ts';
import { vector, type Vector } from './vector.ts';

/** A tie rod whose inner end has followed the rack. */
export interface SlidTieRod {
  readonly rod: TieRod;
  /** How far the rack has moved, in metres; positive to the vehicle's left, on both sides. */
  readonly travel: number;
}

const OUT_OF_REACH = {
  path: '',
  wrong: 'takes the tie rod’s outer end out of reach of the rack',
  allowed: 'positions that the rod can follow without changing its length',
};

/**
 * The tie rod once its outer end has gone somewhere else: the inner end slides along Y (with the rack)
 * so that the rod keeps its length, (O'_x − I_x)² + (O'_y − I_y − Δ)² + (O'_z − I_z)² = ℓ².
 *
 * Of the two solutions Δ the one nearer to straight ahead is taken.
 *
 * @param ahead the rod straight ahead
 * @param outer O', where the carrier has taken the outer end
 * @returns a fault with an empty path where the rod is too short to reach
 */
export function slidTieRod(ahead: TieRod, outer: Vector): Outcome<SlidTieRod> {
  const { inner } = ahead;
  const alongCar = outer.x - inner.x;
  const acrossCar = outer.y - inner.y;
  const upward = outer.z - inner.z;
  const reach = rodLength(ahead) ** 2 - alongCar ** 2 - upward ** 2;
  if (!(reach >= 0)) return failure(OUT_OF_REACH);
  const onSide = acrossCar === 0 ? ahead.outer.y - inner.y : acrossCar;
  const travel = acrossCar - Math.sign(onSide) * Math.sqrt(reach);
  const moved = vector(inner.x, inner.y + travel, inner.z);
  return success({ rod: { outer, inner: moved }, travel });
}

/** A steered corner whose rack has followed. */
export interface SteeredOnRack {
  readonly corner: Corner;
  /** Where the corner has a tie rod: as in `SlidTieRod`. */
  readonly rackTravel?: number | undefined;
}

/**
 * The corner with its carrier turned by θ (see `steered`), its tie rod's inner end slid along with the rack.
 *
 * @param angle θ in radians about the upward axis, positive to the left
 * @returns a fault with an empty path where the rod is too short to reach
 */
export function steeredOnRack(corner: Corner, angle: number): Outcome<SteeredOnRack> {
  const now = steered(corner, angle);
  if (corner.tieRod === undefined || now.tieRod === undefined) return success({ corner: now });
  const slid = slidTieRod(corner.tieRod, now.tieRod.outer);
  if (!slid.ok) return slid;
  const { rod, travel } = slid.value;
  return success({ corner: { ...now, tieRod: rod }, rackTravel: travel });
}
