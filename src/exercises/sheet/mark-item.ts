import { signPhrase } from '#core/quantities.ts';
import { UNITS } from '#core/units/units.ts';
import type { DrawnSlip, Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { grade, type Verdict } from '../grade.ts';
import type { Entry } from '../own-road.ts';
import { readEntry, type Typed } from '../read-entry.ts';
import type { ItemWork } from './result.ts';
import type { SheetItem } from './sheet.ts';

/** What came out of one part, in the marks of the sheet. */
export interface MarkedPart {
  readonly typed: Typed;
  /** The unit that counts where none was typed; empty where there is none. */
  readonly unit: string;
  /** What the chosen word says of this part: `inboard of the contact centre`. */
  readonly direction?: string;
  /** `unreadable` where something stands in the field that is no value; for the rest see `grade`. */
  readonly verdict: Verdict | 'unreadable';
  readonly slip?: Pick<DrawnSlip, 'id' | 'confuses' | 'text'>;
  readonly hinted: boolean;
  readonly earned: number;
  readonly possible: number;
}

export interface MarkedAttempt {
  readonly parts: readonly MarkedPart[];
  readonly earned: number;
}

/** What came out of one exercise of a sheet. */
export interface MarkedItem {
  /** All that were made, oldest first. */
  readonly attempts: readonly MarkedAttempt[];
  /** The best one, the earliest of equals: this counts. Without any attempt it is one of empty fields. */
  readonly counted: MarkedAttempt;
  readonly earned: number;
  readonly possible: number;
}

/**
 * Marks one exercise of a sheet from what was typed: each attempt part by part, errors carried forward. The marks
 * of the item are shared out by the weights of its parts; a part whose hint was looked at earns its share less the
 * hint's cost.
 */
export function markItem(item: SheetItem, exercise: Exercise, work: ItemWork): MarkedItem {
  const attempts = work.attempts.map((typed) => markAttempt(item, exercise, typed, work.hints));
  const counted = attempts.reduce<MarkedAttempt | undefined>(
    (best, one) => (best === undefined || one.earned > best.earned ? one : best),
    undefined,
  );
  const settled = counted ?? markAttempt(item, exercise, [], work.hints);
  return { attempts, counted: settled, earned: settled.earned, possible: item.marks };
}

function markAttempt(
  { marks: full, hintCost_percent = 0 }: SheetItem,
  exercise: Exercise,
  typed: readonly Typed[],
  hints: readonly number[],
): MarkedAttempt {
  const readings = exercise.parts.map(({ definition }, i) =>
    readEntry(typed[i] ?? NOTHING, definition),
  );
  const entries = readings.map((reading): Entry =>
    reading.kind === 'value' ? reading.value : undefined,
  );
  const marks = grade(exercise, entries);
  const parts = marks.parts.map(({ verdict, slip, earned, possible }, i): MarkedPart => {
    const share = full / marks.possible;
    const hinted = hints.includes(i);
    const definition = exercise.parts[i]?.definition;
    const word = typed[i]?.word;
    const unreadable = readings[i]?.kind === 'problem' && verdict === 'missing';
    return {
      typed: typed[i] ?? NOTHING,
      unit: definition && !isList(definition.form) ? UNITS[definition.unit].symbol : '',
      ...(word && definition && { direction: signPhrase(definition.quantity, word) }),
      verdict: unreadable ? 'unreadable' : verdict,
      ...(slip && { slip }),
      hinted,
      earned: earned * share * (hinted ? 1 - hintCost_percent / 100 : 1),
      possible: possible * share,
    };
  });
  return { parts, earned: parts.reduce((sum, part) => sum + part.earned, 0) };
}

const NOTHING: Typed = { text: '' };
