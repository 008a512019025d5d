import type { Sides } from '#core/axle.ts';
import { outboardSign, type Side } from '#core/corner.ts';
import { shaftCouple } from '#core/shaft-couple.ts';
import { rackForce } from '#core/tie-rod.ts';
import { vector } from '#core/vector.ts';
import { momentWithLever } from './along.ts';
import { cornerAtRoad } from './corner.ts';
import { cornerOnRack, heldBy, type Forward } from './steering.ts';

/**
 * What unequal braking forces leave to turn both wheels, the brakes sitting on the carriers: N·m, to the left positive.
 *
 * @param lever about the axis, in metres, positive with the axis inboard of the tyre's middle
 */
export const steeringMomentOf = (brake: Sides<number>, lever: number): number =>
  momentWithLever(lever, 'left', { by: 'brake', force: brake.left }) +
  momentWithLever(lever, 'right', { by: 'brake', force: brake.right });

/** The same from the difference alone, left less right: as if only the left brake had it. */
export const steeringMomentOfDifference = (difference: number, lever: number): number =>
  steeringMomentOf({ left: difference, right: 0 }, lever);

/**
 * Force on the rack, to the left positive, when something turns both wheels; their tie rods lie straight across.
 *
 * @param moment of both wheels together, in N·m, to the left positive
 * @param lever of each tie rod, in metres
 */
export function onRack(moment: number, lever: number, forward: Forward): number {
  const { axis, tieRod, ...corner } = cornerOnRack(0, lever, forward);
  return rackForce(tieRod, heldBy({ ...corner, axis, tieRod }, moment));
}

/**
 * Moment of a joint's couple about an upright steering axis, on an upright wheel that is driven; N·m, to the left positive.
 *
 * @param torque in the shaft, driving
 * @param rise by how much the shaft's outer end stands higher, in radians
 */
export function jointMoment(side: Side, torque: number, rise: number): number {
  const out = outboardSign(side);
  const corner = { ...cornerAtRoad({}), side, spin: vector(0, out, 0) };
  const shaft = vector(0, out * Math.cos(rise), Math.sin(rise));
  return shaftCouple(corner, out * torque, shaft).z;
}
