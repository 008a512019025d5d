import { BEARING_QUANTITIES } from './bearing-quantities.ts';
import { LIFE_QUANTITIES } from './life-quantities.ts';
import { AXLE_QUANTITIES } from './axle-quantities.ts';
import { SIDE_AND_LOAD_QUANTITIES } from './side-and-load-quantities.ts';
import { FASTENING_QUANTITIES } from './fastening/fastening-quantities.ts';
import { CHANGE_QUANTITIES } from './change-quantities.ts';
import { TURNED_WHEEL_QUANTITIES } from './turned-wheel-quantities.ts';

/** What kind of number a quantity is: decides the units it is shown in. */
export type QuantityKind =
  'length' | 'angle' | 'force' | 'moment' | 'speed' | 'life' | 'distance' | 'share';

/** A quantity of the course: one name, one symbol, and what its sign means in words. */
export interface Quantity {
  readonly name: string;
  /** Symbol as in the formulas, one letter with an index at most (TeX). */
  readonly symbol: string;
  readonly kind: QuantityKind;
  /** One word for a positive value (`inboard`), used beside the number. Absent where there is no sign. */
  readonly positive?: string;
  readonly negative?: string;
  /** What the sign is about, read before the word: `the axis meets the road` inboard. */
  readonly subject?: string;
  /** What the word is counted from: inboard of `the contact centre`. */
  readonly place?: string;
}

/**
 * Every quantity that figures, prose and exercises speak about. Signs as in ISO 8855: the positive word
 * is the positive side. Keys are those of `Geometry` where the corner's geometry gives the value.
 */
export const QUANTITIES = {
  inclination: {
    name: 'steering-axis inclination',
    symbol: '\\sigma',
    kind: 'angle',
    positive: 'inboard',
    negative: 'outboard',
    subject: 'the top of the axis leans',
  },
  caster: {
    name: 'caster angle',
    symbol: '\\tau',
    kind: 'angle',
    positive: 'rearward',
    negative: 'forward',
    subject: 'the top of the axis leans',
  },
  camber: {
    name: 'camber',
    symbol: '\\gamma',
    kind: 'angle',
    positive: 'outboard',
    negative: 'inboard',
    subject: 'the top of the wheel leans',
  },
  includedAngle: {
    name: 'included angle',
    symbol: '\\sigma+\\gamma',
    kind: 'angle',
  },
  toe: {
    name: 'toe',
    symbol: '\\psi',
    kind: 'angle',
    positive: 'toe-in',
    negative: 'toe-out',
    subject: 'the wheel has',
  },
  scrubRadius: {
    name: 'scrub radius',
    symbol: 'r',
    kind: 'length',
    positive: 'inboard',
    negative: 'outboard',
    subject: 'the axis meets the road',
    place: 'the contact centre',
  },
  trail: {
    name: 'mechanical trail',
    symbol: 'n',
    kind: 'length',
    positive: 'ahead',
    negative: 'behind',
    subject: 'the axis meets the road',
    place: 'the contact centre',
  },
  spindleOffset: {
    name: 'spindle offset',
    symbol: 'q',
    kind: 'length',
    positive: 'inboard',
    negative: 'outboard',
    subject: 'the axis passes',
    place: 'the wheel centre',
  },
  casterOffsetAtCentre: {
    name: 'caster offset at the wheel centre',
    symbol: 'n_C',
    kind: 'length',
    positive: 'ahead',
    negative: 'behind',
    subject: 'the axis passes',
    place: 'the wheel centre',
  },
  axisDistance: {
    name: 'distance from wheel centre to axis',
    symbol: 'd',
    kind: 'length',
  },
  loadedRadius: {
    name: 'loaded radius',
    symbol: 'R',
    kind: 'length',
  },
  steer: {
    name: 'road-wheel steer',
    symbol: '\\delta',
    kind: 'angle',
    positive: 'left',
    negative: 'right',
    subject: 'the wheel is turned to the',
  },
  lift: {
    name: 'lift',
    symbol: 'h',
    kind: 'length',
    positive: 'raised',
    negative: 'lowered',
    subject: 'this corner of the car is',
  },
  ...TURNED_WHEEL_QUANTITIES,
  brakeMoment: momentQuantity('moment of the braking force', 'M_b'),
  driveMoment: momentQuantity('moment of the driving force', 'M_a'),
  blowMoment: momentQuantity('moment of the blow', 'M_s'),
  dragMoment: momentQuantity('moment of the rolling resistance', 'M_w'),
  sideMoment: momentQuantity('moment of the side force', 'M_y'),
  weightMoment: momentQuantity('moment of the wheel load', 'M_z'),
  ...SIDE_AND_LOAD_QUANTITIES,
  brakeTorque: {
    name: 'brake torque',
    symbol: 'T_b',
    kind: 'moment',
  },
  shaftTorque: {
    name: 'torque in the shaft',
    symbol: 'T_a',
    kind: 'moment',
    positive: 'driving',
    negative: 'holding back',
    subject: 'the shaft is',
  },
  rodForce: {
    name: 'tie-rod force',
    symbol: 'N',
    kind: 'force',
    positive: 'in tension',
    negative: 'in compression',
    subject: 'the tie rod is',
  },
  rackForce: {
    name: 'rack force',
    symbol: 'F_r',
    kind: 'force',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'the rack is pushed',
  },
  handwheelTorque: {
    name: 'torque at the steering wheel',
    symbol: 'T',
    kind: 'moment',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'the steering wheel is turned',
  },
  rimForce: rimForceOf('force at the rim', 'F_h'),
  rimForceUnassisted: rimForceOf('force at the rim without power steering', 'F_0'),
  ...BEARING_QUANTITIES,
  ...LIFE_QUANTITIES,
  ...AXLE_QUANTITIES,
  ...FASTENING_QUANTITIES,
  ...CHANGE_QUANTITIES,
} as const satisfies Record<string, Quantity>;

/** A moment about the steering axis: positive when it turns the wheel to the left, on both sides of the car. */
export function momentQuantity(name: string, symbol: string) {
  return {
    name,
    symbol,
    kind: 'moment',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'it turns the wheel',
  } as const;
}

/** What a driver has to hold at the rim of the steering wheel; signed like the torque that it answers. */
function rimForceOf(name: string, symbol: string) {
  return {
    name,
    symbol,
    kind: 'force',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'it turns the steering wheel',
  } as const;
}

export type QuantityId = keyof typeof QUANTITIES;

/** The word of a sign with what it is counted from: `inboard of the contact centre`, `behind the wheel centre`. */
export function signPhrase(quantity: Quantity, sign: 'positive' | 'negative'): string {
  const word = quantity[sign] ?? '';
  return word === '' || quantity.place === undefined ? word : countedFrom(word, quantity.place);
}

/** A word of direction and what it is counted from: `ahead of the wheel centre`, `behind the wheel centre`. */
export const countedFrom = (word: string, place: string): string =>
  word === 'behind' ? `${word} ${place}` : `${word} of ${place}`;

/** Whether a word names a quantity of the course. */
export const isQuantityId = (id: string): id is QuantityId => Object.hasOwn(QUANTITIES, id);

/** The quantity of that name, with its optional words readable whatever the entry leaves out. */
export const quantity = (id: QuantityId): Quantity => QUANTITIES[id];
