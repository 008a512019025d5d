import type { Quantity } from '../quantities.ts';

/** What figures and prose say about how a wheel is held. Each is of one fastener. */
export const FASTENING_QUANTITIES = {
  engagement: { name: 'thread engagement', symbol: 'h', kind: 'length' },
  tighteningTorque: { name: 'tightening torque', symbol: 'T', kind: 'moment' },
  clampLoad: { name: 'clamp load', symbol: 'F', kind: 'force' },
  clampLoadOiled: { name: 'clamp load with oil on the thread', symbol: 'F', kind: 'force' },
  clampLeast: { name: 'least clamp load, torque wrench', symbol: 'F_1', kind: 'force' },
  clampLeastByImpact: { name: 'least clamp load, impact wrench', symbol: 'F_1', kind: 'force' },
  clampNeeded: { name: 'clamp load needed, faces clean', symbol: 'F_0', kind: 'force' },
  clampNeededSoiled: { name: 'clamp load needed, faces soiled', symbol: 'F_0', kind: 'force' },
} as const satisfies Record<string, Quantity>;

export type FasteningQuantity = keyof typeof FASTENING_QUANTITIES;

/** Whether a word names a quantity of how a wheel is held. */
export const isFasteningQuantity = (id: string): id is FasteningQuantity =>
  Object.hasOwn(FASTENING_QUANTITIES, id);
