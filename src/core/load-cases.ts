import type { Action } from './action.ts';
import { stanceOf, type Corner, type Stance } from './corner.ts';
import { shaftCouple } from './shaft-couple.ts';
import { along, minus, NOTHING, times, triple, UP, vector, type Vector } from './vector.ts';

/** A brake on the carrier (outboard friction brake). The force is positive when it brakes forward travel. */
export interface BrakeOnCarrier {
  readonly kind: 'brake-on-carrier';
  /** In newtons. */
  readonly force: number;
}

/** A torque that comes through a shaft: drive, recuperation, an inboard brake. */
export interface Shaft {
  readonly kind: 'shaft';
  /** At the tyre, in newtons: positive drives, negative brakes. */
  readonly force: number;
  /**
   * Direction of the shaft in vehicle axes, outboard, of any length. Left out, the shaft lies along the
   * spin axis. It is taken as it stands: steering the corner does not turn it.
   */
  readonly shaftDirection?: Vector | undefined;
}

/** A force that passes the wheel bearing without a torque: an edge, a pothole, rolling resistance. */
export interface Impact {
  readonly kind: 'impact';
  /** In vehicle axes, in newtons. */
  readonly force: Vector;
}

/** A cornering force across the wheel. */
export interface Lateral {
  readonly kind: 'lateral';
  /** In newtons, positive to the vehicle's left on both sides. */
  readonly force: number;
  /** How far behind the contact centre the tyre's side force acts, in metres. */
  readonly pneumaticTrail: number;
}

/** The wheel load. */
export interface Vertical {
  readonly kind: 'vertical';
  /** In newtons, upward. */
  readonly force: number;
}

/** A force of the road on the wheel, with the way it takes to the carrier. */
export type LoadCase = BrakeOnCarrier | Shaft | Impact | Lateral | Vertical;

/**
 * Where a load reaches the carrier of a corner as it stands (steered or not), and as what.
 *
 * - brake on the carrier: −F e_x at the contact centre, since the caliper hands the brake torque over too
 * - shaft along the spin axis: F e_x at the wheel centre, since the torque leaves through the shaft
 * - shaft at an angle: F e_x at the contact centre and the joint's couple, with T = −s·((P − C) × F e_x)
 * - impact: F at the wheel centre, since a freely rolling wheel passes no torque
 * - lateral: F e_left at the contact centre moved back along e_x by the pneumatic trail
 * - vertical: F upward at the contact centre
 *
 * @throws RangeError for a shaft that does not point outboard (see `shaftCouple`), and for a wheel that lies flat
 *
 * Source: rigid-body statics; Reimpell, Stoll and Betzler, The Automotive Chassis, 2nd ed., 3.8 (from
 * memory) for the brake at the ground and the drive at the wheel centre.
 */
export const actionOf = (corner: Corner, load: LoadCase): Action =>
  actionOn(corner, stanceOf(corner), load);

/**
 * As `actionOf`, where the stance of the corner is known already: for several loads on one corner.
 *
 * @param stance of this corner
 */
export function actionOn(corner: Corner, stance: Stance, load: LoadCase): Action {
  const { ahead, contact } = stance;
  switch (load.kind) {
    case 'brake-on-carrier':
      return forceAt(contact, times(-load.force, ahead));
    case 'shaft': {
      const force = times(load.force, ahead);
      return load.shaftDirection === undefined
        ? forceAt(corner.wheelCentre, force)
        : shaftAction(corner, contact, force, load.shaftDirection);
    }
    case 'impact':
      return forceAt(corner.wheelCentre, load.force);
    case 'lateral': {
      const toTheLeft = vector(-ahead.y, ahead.x, 0);
      return forceAt(along(contact, -load.pneumaticTrail, ahead), times(load.force, toTheLeft));
    }
    case 'vertical':
      return forceAt(contact, times(load.force, UP));
  }
}

function shaftAction(corner: Corner, contact: Vector, force: Vector, shaft: Vector): Action {
  const torque = -triple(corner.spin, minus(contact, corner.wheelCentre), force);
  return { force, point: contact, couple: shaftCouple(corner, torque, shaft) };
}

const forceAt = (point: Vector, force: Vector): Action => ({ force, point, couple: NOTHING });
