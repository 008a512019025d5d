import type { Fault } from '#core/fault.ts';
import type { Exercise } from '../exercise.ts';
import type { SheetResult } from './result.ts';
import type { Sheet } from './sheet.ts';

/** What a result holds that cannot have been done on its sheet: more attempts than there are, hints where there are none. */
export function misfits(
  { items }: Sheet,
  variant: readonly Exercise[],
  result: SheetResult,
): readonly Fault[] {
  if (result.items.length !== items.length) {
    return [
      {
        path: 'items',
        wrong: `has ${result.items.length} members`,
        allowed: `${items.length}, as the sheet has`,
      },
    ];
  }
  return items.flatMap(({ attempts, hintCost_percent }, i) => {
    const work = result.items[i];
    const count = variant[i]?.parts.length ?? 0;
    if (!work) return [];
    const path = `items[${i}]`;
    const faults: Fault[] = [];
    if (work.attempts.length > attempts) {
      faults.push({
        path: `${path}.attempts`,
        wrong: `has ${work.attempts.length} members`,
        allowed: `up to ${attempts} on this sheet`,
      });
    }
    if (work.attempts.some((entries) => entries.length !== count)) {
      faults.push({
        path: `${path}.attempts`,
        wrong: 'has another count of fields',
        allowed: `${count} in each attempt`,
      });
    }
    if (hintCost_percent === undefined && work.hints.length > 0) {
      faults.push({
        path: `${path}.hints`,
        wrong: 'tells of hints',
        allowed: 'none on this sheet',
      });
    }
    if (work.hints.some((hint) => hint >= count)) {
      faults.push({
        path: `${path}.hints`,
        wrong: 'tells of a part that there is not',
        allowed: `parts 0 to ${count - 1}`,
      });
    }
    return faults;
  });
}
