import { momentOf } from '#core/action.ts';
import { yawMoment } from '#core/axle.ts';
import type { AxleQuantityId } from '#core/axle-quantities.ts';
import { contactCentre, type Side } from '#core/corner.ts';
import { rimForce } from '#core/handwheel.ts';
import { rackSense } from '#core/tie-rod.ts';
import type { Standing } from '../corner/standing.ts';
import { AXLE_CASE_IDS, rearwardForce } from './axle-cases.ts';
import { axleStanding, type AxleStanding } from './axle-standing.ts';

/** A quantity of both front wheels together, in SI, as the corner’s setting has them. */
export function axleValueOf(id: AxleQuantityId, now: Standing): number {
  const axle = axleStanding(now);
  switch (id) {
    case 'leftMoment':
      return momentOn('left', axle);
    case 'rightMoment':
      return momentOn('right', axle);
    case 'steeringMoment':
      return momentOn('left', axle) + momentOn('right', axle);
    case 'leftRodForce':
      return axle.reaction?.left.tieRod?.rodForce ?? 0;
    case 'rightRodForce':
      return axle.reaction?.right.tieRod?.rodForce ?? 0;
    case 'netRackForce':
      return axle.reaction?.rackForce ?? 0;
    case 'axleRimForce':
      return atRim(axle);
    case 'axleRimForceUnassisted':
      return atRim(axle) * now.gear.assist;
    case 'yawMoment':
      return yawMoment({ left: heldBack('left', now), right: heldBack('right', now) }, track(axle));
  }
  function atRim({ reaction, corners: { left } }: AxleStanding): number {
    if (!reaction || !left.tieRod) return 0;
    // The steering wheel goes with the road wheels, wherever the rack lies.
    return rackSense(left.axis, left.tieRod) * rimForce(reaction.handwheelTorque, now.gear);
  }
}

/** Moment of all loads on one wheel about its axis, in N·m, positive to the left. */
export const momentOn = (side: Side, { corners, loads }: AxleStanding): number =>
  loads[side].reduce((sum, { action }) => sum + momentOf(corners[side], action), 0);

/** Between the contact centres, in metres. */
const track = ({ corners: { left, right } }: AxleStanding): number =>
  contactCentre(left).y - contactCentre(right).y;

/** How hard the road holds one tyre back, in newtons. */
const heldBack = (side: Side, { setting }: Standing): number =>
  AXLE_CASE_IDS.reduce((sum, which) => sum + rearwardForce(which, side, setting), 0);
