import type { Action } from './action.ts';
import { contactCentre, heading, type Corner } from './corner.ts';
import type { BrakeOnCarrier, Impact, Shaft } from './load-cases.ts';
import { movedTo, opposite } from './moved-action.ts';
import { shaftCouple } from './shaft-couple.ts';
import { along, dot, NOTHING, plus, times, vector, type Vector } from './vector.ts';

/** A load along the car: those that act through the wheel's rim, and so through its torque. */
export type LoadAlong = BrakeOnCarrier | Shaft | Impact;

/**
 * Wheel and carrier cut apart at what joins them. The wheel is all that turns: tyre, rim, brake disc, hub and
 * the outer joint of a shaft. The carrier is all that does not: knuckle, outer ring of the bearing, caliper.
 */
export interface FreeBodies {
  /** The road or an edge on the tyre. */
  readonly tyre: Action;
  /** The shaft on the wheel, where the load has one: a couple. */
  readonly shaft?: Action;
  /** The pads on the disc, where the brake sits on the carrier: a couple about the spin axis. */
  readonly pads?: Action;
  /** The carrier on the wheel in the bearing, at the wheel centre. Never a couple about the spin axis. */
  readonly bearing: Action;
}

/**
 * The forces and couples on the wheel of a corner under a load along the car. They hold it in balance: the
 * wheel's own mass and its spinning up or down are left out.
 *
 * Whoever turns or holds the wheel (pads or shaft) gives it the torque that the force at the tyre takes. The
 * bearing holds the rest: a force in any direction, and a couple square to the spin axis, about which it
 * turns freely.
 *
 * @throws RangeError for a shaft that does not point outboard (see `shaftCouple`)
 *
 * Source: rigid-body statics (from memory).
 */
export function freeBodies(corner: Corner, load: LoadAlong): FreeBodies {
  const tyre = onTyre(corner, load);
  const torque = -dot(corner.spin, movedTo(tyre, corner.wheelCentre).couple);
  switch (load.kind) {
    case 'brake-on-carrier': {
      const pads = coupleAt(corner, times(torque, corner.spin));
      return { tyre, pads, bearing: balance(corner, [tyre, pads]) };
    }
    case 'shaft': {
      const direction = load.shaftDirection ?? corner.spin;
      const shaft = coupleAt(corner, shaftCouple(corner, torque, direction));
      return { tyre, shaft, bearing: balance(corner, [tyre, shaft]) };
    }
    case 'impact':
      return { tyre, bearing: balance(corner, [tyre]) };
  }
}

/** What the wheel does to the carrier, counted at the wheel centre: the opposites of bearing and pads. */
export function onCarrier({ bearing, pads }: FreeBodies): Action {
  const { force, point, couple } = opposite(bearing);
  return { force, point, couple: pads ? plus(couple, opposite(pads).couple) : couple };
}

/** The point of the wheel plane straight below the wheel centre, a share of the way to the contact centre. */
export const belowCentre = (corner: Corner, share: number): Vector =>
  along(times(1 - share, corner.wheelCentre), share, contactCentre(corner));

function onTyre(corner: Corner, load: LoadAlong): Action {
  if (load.kind === 'impact') {
    // A wheel that rolls freely takes no torque, so the line of such a force runs through its centre.
    return { force: load.force, point: corner.wheelCentre, couple: NOTHING };
  }
  const size = load.kind === 'shaft' ? load.force : -load.force;
  const force = times(size, heading(corner));
  return { force, point: contactCentre(corner), couple: NOTHING };
}

const coupleAt = ({ wheelCentre }: Corner, couple: Vector): Action => ({
  force: vector(0, 0, 0),
  point: wheelCentre,
  couple,
});

/** What holds actions in balance, at the wheel centre. */
function balance(corner: Corner, actions: readonly Action[]): Action {
  const atCentre = actions.map((action) => movedTo(action, corner.wheelCentre));
  return opposite({
    force: atCentre.reduce((sum, { force }) => plus(sum, force), NOTHING),
    point: corner.wheelCentre,
    couple: atCentre.reduce((sum, { couple }) => plus(sum, couple), NOTHING),
  });
}
