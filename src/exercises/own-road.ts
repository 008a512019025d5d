import type { DrawnPart } from './exercise.ts';
import { within } from './tolerance.ts';

/** What a person entered for a part, in SI; undefined where nothing was. */
export type Entry = number | undefined;

/**
 * The learner's values before a part: what was entered; where nothing was, what the values before come to;
 * the true answer where either cannot be or leads nowhere.
 */
export function own(
  parts: readonly DrawnPart[],
  entries: readonly Entry[],
  index: number,
): number[] {
  const values: number[] = [];
  for (const part of parts) {
    if (values.length >= index) break;
    values.push(ownValue(part, entries[values.length], values));
  }
  return values;
}

/** The learner's value of one part, given those before it. */
export function ownValue(part: DrawnPart, entry: Entry, earlier: readonly number[]): number {
  const value = entry ?? part.follow(earlier);
  return leadsOn(part, value) ? value : part.answer;
}

/** What a part comes to on the learner's own road; undefined where that road ends. */
export function followed(part: DrawnPart, earlier: readonly number[]): number | undefined {
  const value = part.follow(earlier);
  return possibleFor(part, value) ? value : undefined;
}

/** Whether a part's value can be worked on with: nought makes the next step trivial, a lean past level has no solution. */
export const leadsOn = (part: DrawnPart, value: number): boolean =>
  possibleFor(part, value) && !within(part.tolerance, value, 0);

function possibleFor({ definition }: DrawnPart, value: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (definition.quantity.kind === 'angle' && Math.abs(value) >= Math.PI / 2) return false;
  return definition.possible?.(value) ?? true;
}
