import { fromSI, toSI } from '#core/units/convert.ts';
import type { Check } from '#exercises/audit/check.ts';
import type { Exercise } from '#exercises/exercise.ts';
import { grade } from '#exercises/grade.ts';
import { TEXTBOOK } from './textbook.ts';

/** Rounding errors of the two ways, in millimetres and degrees of a few hundred. */
const NOISE = 1e-9;

/** The answers of every kind by a second way, without the core. */
export const TEXTBOOK_CHECKS: readonly Check[] = [
  {
    id: 'textbook',
    says: 'has the answers of plane trigonometry',
    faults: (exercise) => {
      const values = byTextbook(exercise, (value) => value);
      return exercise.parts.flatMap(({ answer, definition: { id, unit } }, i) => {
        const value = values[i] ?? NaN;
        return Math.abs(fromSI(answer, unit) - value) <= NOISE ? [] : [`${id}: ${value}`];
      });
    },
  },
  {
    id: 'calculator',
    says: 'marks right what a pocket calculator shows, used as it is shown',
    faults: (exercise) => {
      const values = byTextbook(exercise, (value, decimals) => Number(value.toFixed(decimals)));
      const entries = exercise.parts.map(({ definition: { unit } }, i) =>
        toSI(values[i] ?? NaN, unit),
      );
      return grade(exercise, entries).parts.flatMap(({ verdict }, i) =>
        verdict === 'right' ? [] : [`part ${i} ${verdict}`],
      );
    },
  },
];

/** Works an exercise by the textbook, writing every value down in a way of its own. Millimetres and degrees. */
function byTextbook(
  { kind, item, parts }: Exercise,
  write: (value: number, decimals: number) => number,
): readonly number[] {
  const values: number[] = [];
  for (const [i, step] of (TEXTBOOK[kind] ?? []).entries()) {
    const value = step(item as Readonly<Record<string, number>>, values);
    values.push(write(value, parts[i]?.definition.decimals ?? NaN));
  }
  return values;
}
