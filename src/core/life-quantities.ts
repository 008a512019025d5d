import type { Quantity } from './quantities.ts';

/** What a duty cycle does to the two rows of a wheel bearing, and how long they are rated to last under it. */
export const LIFE_QUANTITIES = {
  rowRating: { name: 'load rating of a row', symbol: 'C', kind: 'force' },
  outboardMeanLoad: {
    name: 'mean equivalent load of the outboard row',
    symbol: 'P_o',
    kind: 'force',
  },
  inboardMeanLoad: {
    name: 'mean equivalent load of the inboard row',
    symbol: 'P_i',
    kind: 'force',
  },
  outboardLife: { name: 'rating life of the outboard row', symbol: 'L_o', kind: 'life' },
  inboardLife: { name: 'rating life of the inboard row', symbol: 'L_i', kind: 'life' },
  hubLife: { name: 'rating life of both rows together', symbol: 'L', kind: 'life' },
  hubDistance: { name: 'rating life as a distance', symbol: 's', kind: 'distance' },
  relativeLife: { name: 'rating life, of what it was', symbol: 'L/L_0', kind: 'share' },
  life95: { name: 'life that 95 of 100 reach', symbol: 'L_5', kind: 'life' },
  life99: { name: 'life that 99 of 100 reach', symbol: 'L_1', kind: 'life' },
  bendShare: { name: 'share of the distance in bends', symbol: 'q_b', kind: 'share' },
  outboardBendFatigue: {
    name: 'fatigue of the outboard row from bends',
    symbol: '\\varphi_o',
    kind: 'share',
  },
  inboardBendFatigue: {
    name: 'fatigue of the inboard row from bends',
    symbol: '\\varphi_i',
    kind: 'share',
  },
} as const satisfies Record<string, Quantity>;

export type LifeQuantity = keyof typeof LIFE_QUANTITIES;

/** Whether a word names a quantity of a bearing’s life. */
export const isLifeQuantity = (id: string): id is LifeQuantity =>
  Object.hasOwn(LIFE_QUANTITIES, id);
