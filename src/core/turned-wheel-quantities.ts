import type { Quantity } from './quantities.ts';
import { SWING_QUANTITIES } from './swing-quantities.ts';

const LEANS_THE_WHEEL = {
  kind: 'angle',
  positive: 'outboard',
  negative: 'inboard',
  subject: 'it leans the top of the wheel',
} as const;

/** What turning a wheel does to it and to its car, and what a workshop reads off the turned wheel. */
export const TURNED_WHEEL_QUANTITIES = {
  frontLift: {
    name: 'lift of the middle of the front',
    symbol: 'h_m',
    kind: 'length',
    positive: 'raised',
    negative: 'lowered',
    subject: 'the middle of the front is',
  },
  rotation: {
    name: 'rotation about the axis',
    symbol: '\\theta',
    kind: 'angle',
    positive: 'left',
    negative: 'right',
    subject: 'the carrier is turned to the',
  },
  camberFromInclination: {
    name: 'camber from the inclination',
    symbol: '\\gamma_\\sigma',
    ...LEANS_THE_WHEEL,
  },
  camberFromCaster: { name: 'camber from the caster', symbol: '\\gamma_\\tau', ...LEANS_THE_WHEEL },
  camberByRule: {
    name: 'camber by the rule',
    symbol: '\\gamma_r',
    ...LEANS_THE_WHEEL,
    subject: 'the top of the wheel leans',
  },
  ...SWING_QUANTITIES,
} as const satisfies Record<string, Quantity>;
