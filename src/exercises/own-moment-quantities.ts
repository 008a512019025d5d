import { momentQuantity, type Quantity } from '#core/quantities.ts';

/** Steps on the way to what turns a wheel about its steering axis, and to what the hands hold of it. */
export const OWN_MOMENT_QUANTITIES = {
  lever: {
    name: 'lever about the steering axis',
    symbol: 'a',
    kind: 'length',
  },
  momentsTogether: momentQuantity('moment of both together', 'M'),
  tyreForce: {
    name: 'force at the tyre',
    symbol: 'F',
    kind: 'force',
  },
  momentOfForce: momentQuantity('moment about the steering axis', 'M'),
  returningOffset: {
    name: 'offset that brings the wheel back',
    symbol: 'a',
    kind: 'length',
  },
  momentOnLeft: momentQuantity('moment of the left wheel load', 'M_l'),
  momentOnRight: momentQuantity('moment of the right wheel load', 'M_r'),
  momentOfBoth: momentQuantity('moment of both wheel loads', 'M'),
  printLever: {
    name: 'lever of the print',
    symbol: 'a',
    kind: 'length',
  },
  rackEffort: {
    name: 'force that moves the rack',
    symbol: 'F_r',
    kind: 'force',
  },
  rimEffort: {
    name: 'force at the rim without power steering',
    symbol: 'F_h',
    kind: 'force',
  },
  momentAtCentre: momentQuantity('moment of the force at the wheel centre', 'M_1'),
  momentOfCouple: momentQuantity('moment of the couple', 'M_2'),
  momentOfRecuperation: momentQuantity('moment of recuperation', 'M_1'),
  momentOfFriction: momentQuantity('moment of the friction brake', 'M_2'),
  leftJoint: momentQuantity('moment of the left joint’s couple', 'M_l'),
  rightJoint: momentQuantity('moment of the right joint’s couple', 'M_r'),
  brakeDifference: {
    name: 'difference of the braking forces',
    symbol: 'D',
    kind: 'force',
    positive: 'left',
    negative: 'right',
    subject: 'the stronger brake is the',
  },
} as const satisfies Record<string, Quantity>;
