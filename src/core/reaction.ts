import { momentOf, type Action } from './action.ts';
import type { Corner } from './corner.ts';
import { success, type Outcome } from './fault.ts';
import { rackForce, rodForce } from './tie-rod.ts';

/** What holds an action on the carrier in place. */
export interface Reaction {
  /** Moment of the action about the steering axis, in N·m, positive to the left. */
  readonly moment: number;
  /** Where the corner has a tie rod. */
  readonly tieRod?: RodReaction | undefined;
}

/** In newtons. */
export interface RodReaction {
  /** Force in the rod, tension positive. */
  readonly rodForce: number;
  /** Force of the rod on the rack, positive to the vehicle's left. */
  readonly rackForce: number;
}

/**
 * Follows actions on one carrier from the steering axis to the rack. Several actions add up.
 *
 * @param corner as it stands, with the tie rod's inner end where the rack is (see rack-travel.ts)
 * @returns a fault with an empty path where the rod's line passes the axis within 1 mm
 */
export function reactionTo(corner: Corner, actions: readonly Action[]): Outcome<Reaction> {
  const { axis, tieRod } = corner;
  const moment = actions.reduce((sum, action) => sum + momentOf(corner, action), 0);
  if (tieRod === undefined) return success({ moment });
  const inRod = rodForce(axis, tieRod, moment);
  if (!inRod.ok) return inRod;
  return success({
    moment,
    tieRod: { rodForce: inRod.value, rackForce: rackForce(tieRod, inRod.value) },
  });
}
