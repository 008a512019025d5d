import type { Exercise } from '../exercise.ts';
import { markItem, type MarkedItem } from './mark-item.ts';
import type { SheetResult } from './result.ts';
import type { Sheet } from './sheet.ts';

/** A result with its marks, worked out from what was typed. */
export interface MarkedResult {
  readonly result: SheetResult;
  readonly items: readonly MarkedItem[];
  readonly earned: number;
  readonly possible: number;
}

/** Marks a result against the student's own variant. */
export function markResult(
  sheet: Sheet,
  variant: readonly Exercise[],
  result: SheetResult,
): MarkedResult {
  const items = sheet.items.map((item, i) => {
    const exercise = variant[i];
    if (!exercise) throw new RangeError(`item ${i} of ${variant.length} exercises`);
    return markItem(item, exercise, result.items[i] ?? { attempts: [], hints: [] });
  });
  const sum = (pick: (item: MarkedItem) => number): number =>
    items.reduce((total, item) => total + pick(item), 0);
  return {
    result,
    items,
    earned: sum((item) => item.earned),
    possible: sum((item) => item.possible),
  };
}
