import type { Quantity } from './quantities.ts';

const OUT_FROM_THE_MIDDLE = { kind: 'length', place: 'the middle of the car' } as const;

/** What a change of wheels does besides moving levers: where the car ends. */
export const CHANGE_QUANTITIES = {
  track: { name: 'track width', symbol: 'b', kind: 'length' },
  outerEdge: {
    name: 'outer edge of the rim',
    symbol: 'y_o',
    ...OUT_FROM_THE_MIDDLE,
  },
  innerEdge: {
    name: 'inner edge of the rim',
    symbol: 'y_i',
    ...OUT_FROM_THE_MIDDLE,
  },
} as const satisfies Record<string, Quantity>;

export type ChangeQuantity = keyof typeof CHANGE_QUANTITIES;

/** Whether a word names a quantity that a change of wheels moves. */
export const isChangeQuantity = (id: string): id is ChangeQuantity =>
  Object.hasOwn(CHANGE_QUANTITIES, id);
