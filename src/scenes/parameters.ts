import { AXLE_PARAMETERS } from './axle/axle-parameters.ts';
import { DRIVING_PARAMETERS, LOAD_PARAMETERS } from './load-parameters.ts';
import type { Parameter } from './parameter.ts';

/** Everything that can be changed. Lengths in millimetres, angles in degrees, forces in newtons: this is where people type. */
export const PARAMETERS = {
  upperInboard: {
    name: 'Upper pivot, across',
    kind: 'length',
    least: -60,
    most: 60,
    step: 1,
    positive: 'inboard',
    negative: 'outboard',
    none: 'where the car has it',
  },
  upperRearward: {
    name: 'Upper pivot, along',
    kind: 'length',
    least: -60,
    most: 60,
    step: 1,
    positive: 'rearward',
    negative: 'forward',
    none: 'where the car has it',
  },
  lowerOutboard: {
    name: 'Lower pivot, across',
    kind: 'length',
    least: -40,
    most: 40,
    step: 1,
    positive: 'outboard',
    negative: 'inboard',
    none: 'where the car has it',
  },
  lowerForward: {
    name: 'Lower pivot, along',
    kind: 'length',
    least: -40,
    most: 40,
    step: 1,
    positive: 'forward',
    negative: 'rearward',
    none: 'where the car has it',
  },
  subframe: {
    name: 'Subframe, across',
    kind: 'length',
    least: -20,
    most: 20,
    step: 1,
    positive: 'to the left',
    negative: 'to the right',
    none: 'where the car has it',
  },
  shaftRise: {
    name: 'Shaft, out of line with the wheel',
    kind: 'angle',
    least: -12,
    most: 12,
    step: 1,
    positive: 'outer end up',
    negative: 'outer end down',
    none: 'in line',
  },
  spacer: {
    name: 'Spacer',
    kind: 'length',
    least: 0,
    most: 60,
    step: 1,
    positive: 'thick',
    negative: 'thick',
    none: 'no spacer',
  },
  inset: {
    name: 'Inset, change',
    kind: 'length',
    least: -60,
    most: 40,
    step: 1,
    positive: 'more inset',
    negative: 'less inset',
    none: 'the same inset',
  },
  tightening: {
    name: 'Tightening torque, change',
    kind: 'moment',
    least: -100,
    most: 60,
    step: 5,
    positive: 'more',
    negative: 'less',
    none: 'as the maker says',
  },
  wheelWidth: {
    name: 'Rim width, change',
    kind: 'length',
    least: -40,
    most: 80,
    step: 1,
    positive: 'wider',
    negative: 'narrower',
    none: 'the same width',
  },
  radius: {
    name: 'Loaded radius, change',
    kind: 'length',
    least: -40,
    most: 60,
    step: 1,
    positive: 'larger',
    negative: 'smaller',
    none: 'the same radius',
  },
  camberAtTop: {
    name: 'Camber at the upper pivot, change',
    kind: 'angle',
    least: -4,
    most: 4,
    step: 0.1,
    positive: 'outboard',
    negative: 'inboard',
    none: 'the same camber',
  },
  camberAtCarrier: {
    name: 'Camber at the carrier, change',
    kind: 'angle',
    least: -4,
    most: 4,
    step: 0.1,
    positive: 'outboard',
    negative: 'inboard',
    none: 'the same camber',
  },
  steer: {
    name: 'Steer',
    kind: 'angle',
    least: -40,
    most: 40,
    step: 1,
    positive: 'to the left',
    negative: 'to the right',
    none: 'straight ahead',
  },
  ...LOAD_PARAMETERS,
  ...DRIVING_PARAMETERS,
  ...AXLE_PARAMETERS,
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof PARAMETERS;

export const PARAMETER_IDS = Object.keys(PARAMETERS) as readonly ParameterId[];

/** Parameters that load the corner without changing it. */
export const LOAD_IDS = ['brake', 'drive', 'blow', 'drag', 'side', 'weight'] as const;

export type LoadId = (typeof LOAD_IDS)[number];

export const isLoadId = (id: ParameterId): id is LoadId =>
  (LOAD_IDS as readonly string[]).includes(id);

/** How the car is driven: what its bearing is rated for. */
export const DRIVING_IDS = ['outerBends', 'innerBends', 'rough', 'pace'] as const;

export type DrivingId = (typeof DRIVING_IDS)[number];

export const isDrivingId = (id: ParameterId): id is DrivingId =>
  (DRIVING_IDS as readonly string[]).includes(id);

/** Whether a word names a parameter. */
export const isParameterId = (id: string): id is ParameterId => Object.hasOwn(PARAMETERS, id);

/** The nearest allowed value; what somebody typed within the bounds stays as it is. */
export function allowedValue(id: ParameterId, value: number): number {
  const { least, most } = PARAMETERS[id];
  // Steps of 0.1 are not exact in binary: the shortest decimal is what the reader sees and types.
  return Number(Math.min(most, Math.max(least, value)).toFixed(6)) + 0;
}

/** The nearest whole step: where a drag comes to rest. */
export function wholeStep(id: ParameterId, value: number): number {
  const { step } = PARAMETERS[id];
  return Math.round(value / step) * step;
}
