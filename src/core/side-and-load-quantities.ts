import type { Quantity } from './quantities.ts';

/** What a corner under side force and load, and a wheel turned at a standstill, are asked for. */
export const SIDE_AND_LOAD_QUANTITIES = {
  pneumaticTrail: {
    name: 'pneumatic trail',
    symbol: 't',
    kind: 'length',
  },
  selfReturn: {
    name: 'moment of both wheel loads',
    symbol: 'M_r',
    kind: 'moment',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'it turns the wheels',
  },
  parkingByGyration: {
    name: 'parking moment by the disc',
    symbol: 'M_1',
    kind: 'moment',
  },
  parkingByThirds: {
    name: 'parking moment by thirds',
    symbol: 'M_2',
    kind: 'moment',
  },
  parkingByPressure: {
    name: 'parking moment by pressure',
    symbol: 'M_3',
    kind: 'moment',
  },
} as const satisfies Record<string, Quantity>;
