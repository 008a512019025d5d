import type { Side } from '#core/corner.ts';
import type { Parameter } from '../parameter.ts';

const shaft = (side: Side) =>
  ({
    name: `${side === 'left' ? 'Left' : 'Right'} shaft, out of line`,
    kind: 'angle',
    least: -12,
    most: 12,
    step: 1,
    positive: 'outer end up',
    negative: 'outer end down',
    none: 'in line',
  }) as const;

const along = <Way extends string>(name: string, most: number, step: number, way: Way) =>
  ({
    name,
    kind: 'force',
    least: 0,
    most,
    step,
    positive: `rearward on the ${way}`,
    negative: `forward on the ${way}`,
  }) as const;

const throughShaft = (name: string) =>
  ({
    name,
    kind: 'force',
    least: -6000,
    most: 4000,
    step: 100,
    positive: 'driving',
    negative: 'holding back',
    none: 'nothing through the shaft',
  }) as const;

/** What can be set of each side of an axle by itself. Everything else holds for both sides alike. */
export const AXLE_PARAMETERS = {
  leftShaftRise: shaft('left'),
  rightShaftRise: shaft('right'),
  leftBrake: { ...along('Left braking force', 6000, 100, 'tyre'), none: 'not braking' },
  rightBrake: { ...along('Right braking force', 6000, 100, 'tyre'), none: 'not braking' },
  leftDrive: throughShaft('Force through the left shaft'),
  rightDrive: throughShaft('Force through the right shaft'),
  leftBlow: { ...along('Blow on the left wheel', 8000, 100, 'wheel'), none: 'no blow' },
  rightBlow: { ...along('Blow on the right wheel', 8000, 100, 'wheel'), none: 'no blow' },
  leftDrag: { ...along('Left rolling resistance', 300, 10, 'tyre'), none: 'no resistance' },
  rightDrag: { ...along('Right rolling resistance', 300, 10, 'tyre'), none: 'no resistance' },
  crown: {
    name: 'Side force on each tyre',
    kind: 'force',
    least: -300,
    most: 300,
    step: 10,
    positive: 'to the left',
    negative: 'to the right',
    none: 'no side force',
  },
} as const satisfies Record<string, Parameter>;

/** Those that load the axle without changing it. */
export const AXLE_LOAD_IDS = [
  'leftBrake',
  'rightBrake',
  'leftDrive',
  'rightDrive',
  'leftBlow',
  'rightBlow',
  'leftDrag',
  'rightDrag',
  'crown',
] as const;

export type AxleLoadId = (typeof AXLE_LOAD_IDS)[number];

export const isAxleLoadId = (id: string): id is AxleLoadId =>
  (AXLE_LOAD_IDS as readonly string[]).includes(id);

/** Whether it is a force along the car on one of both wheels. */
export const isAlong = (id: string): boolean => isAxleLoadId(id) && id !== 'crown';
