import type { Quantity } from './quantities.ts';

const TURNS_THE_WHEEL = {
  kind: 'moment',
  positive: 'to the left',
  negative: 'to the right',
  subject: 'it turns the wheel',
} as const;

const IN_A_ROD = {
  kind: 'force',
  positive: 'in tension',
  negative: 'in compression',
  subject: 'the tie rod is',
} as const;

const TURNS_THE_STEERING_WHEEL = {
  kind: 'force',
  positive: 'to the left',
  negative: 'to the right',
  subject: 'it turns the steering wheel',
} as const;

/** What both front wheels do together, straight ahead: at the tie rods, at the rack, in the hands, and to the car. */
export const AXLE_QUANTITIES = {
  leftMoment: { name: 'moment about the left axis', symbol: 'M_l', ...TURNS_THE_WHEEL },
  rightMoment: { name: 'moment about the right axis', symbol: 'M_r', ...TURNS_THE_WHEEL },
  steeringMoment: {
    name: 'steering moment of both wheels',
    symbol: 'M_t',
    ...TURNS_THE_WHEEL,
    subject: 'it turns the wheels',
  },
  leftRodForce: { name: 'force in the left tie rod', symbol: 'N_l', ...IN_A_ROD },
  rightRodForce: { name: 'force in the right tie rod', symbol: 'N_r', ...IN_A_ROD },
  netRackForce: {
    name: 'force of both rods on the rack',
    symbol: 'F_n',
    kind: 'force',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'the rack is pushed',
  },
  axleRimForce: {
    name: 'force at the rim from both wheels',
    symbol: 'F_h',
    ...TURNS_THE_STEERING_WHEEL,
  },
  axleRimForceUnassisted: {
    name: 'the same without power steering',
    symbol: 'F_0',
    ...TURNS_THE_STEERING_WHEEL,
  },
  yawMoment: {
    name: 'yaw moment of the front wheels',
    symbol: 'M_c',
    kind: 'moment',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'it turns the car',
  },
} as const satisfies Record<string, Quantity>;

export type AxleQuantityId = keyof typeof AXLE_QUANTITIES;

/** Whether a word names a quantity of both wheels together. */
export const isAxleQuantity = (id: string): id is AxleQuantityId =>
  Object.hasOwn(AXLE_QUANTITIES, id);
