import { fromSI } from '#core/units/convert.ts';
import type { DrawnPart, Exercise } from '#exercises/exercise.ts';
import { givensOf } from '#exercises/givens.ts';

/** The file of a kind and version. */
export interface Frozen {
  readonly kind: string;
  readonly version: number;
  /** One line for each seed of FROZEN_SEEDS. */
  readonly rows: readonly string[];
}

export const FROZEN_SEEDS = Array.from({ length: 50 }, (_, index) => `frozen ${index}`);

export const frozenUrl = ({
  id,
  version,
}: {
  readonly id: string;
  readonly version: number;
}): URL => new URL(`./frozen/${id}.v${version}.json`, import.meta.url);

/**
 * What a seed gives, in millimetres and degrees: its numbers, then for each part the answer, the tolerance and where
 * the slips end: `-9 20 | -9 ±0.3 ≠ 9 11 -18 | 11 ±0.3 ≠ -29 29 31 1`.
 */
export function frozenRow({ item, parts }: Exercise): string {
  const givens = givensOf(item).map(({ amount }) => amount);
  return [givens.join(' '), ...parts.map(frozenPart)].join(' | ');
}

function frozenPart({ answer, tolerance, slips, definition }: DrawnPart): string {
  // Nine decimals: engines may differ behind them.
  const kept = (value: number): number => Number(fromSI(value, definition.unit).toFixed(9)) + 0;
  const ends = slips()
    .map(({ value }) => kept(value))
    .join(' ');
  return `${kept(answer)} ±${kept(tolerance)} ≠ ${ends}`;
}
