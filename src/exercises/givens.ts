import { toSI } from '#core/units/convert.ts';
import { UNITS, type UnitName } from '#core/units/units.ts';

/** A number that an item gives away. */
export interface Given {
  /** As printed, with the sign that the item gives it. */
  readonly amount: number;
  readonly unit: UnitName;
  readonly si: number;
}

/** The numbers of an item: the members whose names end in a unit, such as `spacer_mm`. */
export function givensOf(item: object): readonly Given[] {
  const givens: Given[] = [];
  for (const name of Object.keys(item)) {
    const amount = (item as Readonly<Record<string, unknown>>)[name];
    if (typeof amount !== 'number') continue;
    const unit = unitAtEnd(name);
    if (unit !== undefined) givens.push({ amount, unit, si: toSI(amount, unit) });
  }
  return givens;
}

/** What was found out about names before: kinds have few, and draw them over and over. */
const known = new Map<string, UnitName | 'none'>();

function unitAtEnd(name: string): UnitName | undefined {
  let unit = known.get(name);
  if (unit === undefined) {
    const ending = name.slice(name.lastIndexOf('_') + 1);
    unit = Object.hasOwn(UNITS, ending) ? (ending as UnitName) : 'none';
    known.set(name, unit);
  }
  return unit === 'none' ? undefined : unit;
}
