import { stanceOf, type Corner } from './corner.ts';
import { failure, success, type Outcome } from './fault.ts';
import { handwheelTorque, rimForce, type SteeringGear } from './handwheel.ts';
import { actionOn, type LoadCase } from './load-cases.ts';
import { reactionTo, type Reaction } from './reaction.ts';

/** One thing for each side of the car. */
export interface Sides<Value> {
  readonly left: Value;
  readonly right: Value;
}

/** Both front corners, each with its tie rod, on one rack. */
export interface Axle extends Sides<Corner> {
  readonly gear: SteeringGear;
}

/** What the loads on both front wheels do to rack and driver. */
export interface AxleReaction extends Sides<Reaction> {
  /** Both rods together on the rack, in newtons, positive to the vehicle's left. */
  readonly rackForce: number;
  /** Torque at the steering wheel, in N·m, signed like the rack force. */
  readonly handwheelTorque: number;
  /** Force at the steering wheel's rim, in newtons, signed like the rack force. */
  readonly rimForce: number;
}

/**
 * Follows the loads on both wheels of an axle to the driver's hands. The two rods add on the rack: equal
 * forces left and right cancel there, unequal ones (split friction) do not.
 *
 * @param axle as it stands, with the tie rods' inner ends where the rack is
 * @returns a fault with the path `left` or `right` where a rod's line passes the axis within 1 mm
 * @throws RangeError for a corner without a tie rod
 */
export function axleReaction(
  { left, right, gear }: Axle,
  loads: Sides<readonly LoadCase[]>,
): Outcome<AxleReaction> {
  const onLeft = cornerReaction(left, loads.left);
  const onRight = cornerReaction(right, loads.right);
  if (!onLeft.ok) return onLeft;
  if (!onRight.ok) return onRight;
  const onRack = rackForceOf(onLeft.value) + rackForceOf(onRight.value);
  const torque = handwheelTorque(onRack, gear);
  return success({
    left: onLeft.value,
    right: onRight.value,
    rackForce: onRack,
    handwheelTorque: torque,
    rimForce: rimForce(torque, gear),
  });
}

/**
 * Yaw moment of unequal brake forces on the car, (F_left − F_right)·track/2, in N·m, positive to the left.
 *
 * @param brakeForce on each wheel in newtons, positive backward
 * @param track in metres, between the contact centres
 */
export const yawMoment = (brakeForce: Sides<number>, track: number): number =>
  ((brakeForce.left - brakeForce.right) * track) / 2;

function cornerReaction(corner: Corner, loads: readonly LoadCase[]): Outcome<Reaction> {
  const stance = stanceOf(corner);
  const actions = loads.map((load) => actionOn(corner, stance, load));
  const reaction = reactionTo(corner, actions);
  if (reaction.ok) return reaction;
  return failure(...reaction.faults.map((fault) => ({ ...fault, path: corner.side })));
}

function rackForceOf({ tieRod }: Reaction): number {
  if (tieRod === undefined) throw new RangeError('a corner of an axle has no tie rod');
  return tieRod.rackForce;
}
