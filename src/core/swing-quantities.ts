import type { Quantity } from './quantities.ts';

const CASTER = {
  kind: 'angle',
  positive: 'rearward',
  negative: 'forward',
  subject: 'the top of the axis leans',
} as const;

const INCLINATION = { ...CASTER, positive: 'inboard', negative: 'outboard' } as const;

/** What a workshop makes of the readings off a turned wheel. */
export const SWING_QUANTITIES = {
  casterBySwing: { name: 'caster by the swing', symbol: '\\tau_s', ...CASTER },
  casterByTradeFactor: { name: 'caster by the trade’s factor', symbol: '\\tau_t', ...CASTER },
  casterFromReadings: { name: 'caster from the three readings', symbol: '\\tau_d', ...CASTER },
  inclinationBySwing: {
    name: 'inclination by the braked swing',
    symbol: '\\sigma_s',
    ...INCLINATION,
  },
  inclinationFromReadings: {
    name: 'inclination from the three readings',
    symbol: '\\sigma_c',
    ...INCLINATION,
  },
} as const satisfies Record<string, Quantity>;

export type SwingQuantity = keyof typeof SWING_QUANTITIES;

/** Whether a word names an angle that comes of swinging the wheel. */
export const isSwingQuantity = (id: string): id is SwingQuantity =>
  Object.hasOwn(SWING_QUANTITIES, id);
