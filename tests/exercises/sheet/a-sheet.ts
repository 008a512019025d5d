import { fromSI } from '#core/units/convert.ts';
import { writeFixed } from '#core/write-number.ts';
import type { DrawnPart, Exercise } from '#exercises/exercise.ts';
import { asWritten } from '#exercises/tolerance.ts';
import type { Typed } from '#exercises/read-entry.ts';
import { fingerprintOf } from '#exercises/sheet/fingerprint.ts';
import { sealed, type ItemWork, type SealedResult } from '#exercises/sheet/result.ts';
import type { Sheet } from '#exercises/sheet/sheet.ts';
import { sheetKinds } from '#exercises/sheet/sheet-kinds.ts';
import { variantOf } from '#exercises/sheet/variant.ts';
import { valueOf } from '../../core/example-corner.ts';

/** Two exercises: one with two parts, one with hints and several attempts. */
export const SHEET: Sheet = {
  format: 'knucklebook sheet',
  version: 1,
  title: 'Week three',
  note: 'Show your steps.',
  seed: 'week-3',
  answers: 'each-attempt',
  items: [
    { kind: 'spacer-scrub', version: 1, marks: 4, attempts: 1, tolerance: 'usual' },
    {
      kind: 'rod-force-from-brake',
      version: 1,
      marks: 6,
      attempts: 3,
      hintCost_percent: 50,
      tolerance: 'usual',
    },
  ],
};

export const KINDS = valueOf(await sheetKinds(SHEET));

export const variant = (number: number, sheet = SHEET): readonly Exercise[] =>
  variantOf(sheet, KINDS, number);

/** A value as a careful person types it: the size with a point, the direction by its word. */
export function typedAs({ definition }: DrawnPart, value: number): Typed {
  const { unit, decimals, quantity } = definition;
  const size = writeFixed(Math.abs(fromSI(asWritten(definition, value), unit)), decimals);
  if (quantity.positive === undefined) return { text: size };
  return { text: size, word: value < 0 ? 'negative' : 'positive' };
}

/** Every part of an exercise right. */
export const rightEntries = ({ parts }: Exercise): readonly Typed[] =>
  parts.map((part) => typedAs(part, part.answer));

export const rightWork = (exercise: Exercise): ItemWork => ({
  attempts: [rightEntries(exercise)],
  hints: [],
});

/** A result of a number, all of it right unless said. */
export const resultOf = (
  number: number,
  items: readonly ItemWork[] = variant(number).map(rightWork),
  sheet = SHEET,
): SealedResult =>
  sealed({
    format: 'knucklebook result',
    version: 1,
    sheet: fingerprintOf(sheet),
    number,
    handedIn_min: 29_600_000,
    items,
  });
