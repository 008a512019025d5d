import { quantity, type Quantity } from '#core/quantities.ts';
import type { Role } from '../marks.ts';

/** The lines of an alignment sheet, toe last as it is set last: whatever else is set moves it. */
export const LINE_IDS = ['camber', 'caster', 'inclination', 'includedAngle', 'toe'] as const;

export type LineId = (typeof LINE_IDS)[number];

/** The columns: each wheel, and the pair. */
export const COLUMNS = ['left', 'right', 'pair'] as const;

export type Column = (typeof COLUMNS)[number];

export const isLineId = (id: string): id is LineId => (LINE_IDS as readonly string[]).includes(id);

export const isColumn = (id: string): id is Column => (COLUMNS as readonly string[]).includes(id);

/** What belongs to the axis and what to the wheel; the included angle lies between the two. */
export const LINE_ROLES: Readonly<Record<LineId, Role>> = {
  camber: 'wheel',
  caster: 'axis',
  inclination: 'axis',
  includedAngle: 'guide',
  toe: 'wheel',
};

const LARGER = { positive: 'more on the left', negative: 'more on the right' };

const PAIR_NAMES = {
  camber: 'cross camber',
  caster: 'cross caster',
  inclination: 'difference of the inclinations',
  includedAngle: 'difference of the included angles',
} as const;

/** What a cell speaks about: a wheel’s angle, left less right of it, or, of toe, both wheels together. */
export function cellQuantity(id: LineId, column: Column): Quantity {
  const about = quantity(id);
  if (column !== 'pair') return about;
  if (id === 'toe') return { ...about, name: 'total toe' };
  return { ...about, ...LARGER, name: PAIR_NAMES[id] };
}
