import { fromSI } from '#core/units/convert.ts';
import type { DrawnPart, Exercise } from '../exercise.ts';
import { isList, type ListForm } from '../forms/form.ts';
import { letterOf } from '../forms/rank.ts';
import { shown, wantedInWords } from '../in-words.ts';
import { plain } from '../phrase.ts';
import { fingerprintOf } from '../sheet/fingerprint.ts';
import { variantOf } from '../sheet/variant.ts';
import type { Task } from './task.ts';

/** An exercise as other programs read it: its question, and what is to be entered in which unit. */
export const drawnRecord = ({
  kind,
  version,
  seed,
  title,
  question,
  parts,
  picture,
}: Exercise) => ({
  kind,
  version,
  seed,
  title,
  question: plain(question()),
  ...(picture && { picture: picture() }),
  parts: parts.map(partRecord),
});

/** The same with its answers in the units asked for, how near an entry has to be, and the worked solution. */
export const answeredRecord = (exercise: Exercise) => ({
  ...drawnRecord(exercise),
  parts: exercise.parts.map((part) => ({
    ...partRecord(part),
    ...answerOf(part),
    solution: plain(part.solution()),
  })),
});

/** A task with its exercise, or with the variants of its numbers, written down. */
export const writtenTask = <Row>(task: Task, write: (exercise: Exercise) => Row) =>
  task.of === 'exercise'
    ? write(task.kind.exercise(task.seed))
    : {
        sheet: fingerprintOf(task.sheet),
        title: task.sheet.title,
        variants: task.numbers.map((number) => ({
          number,
          exercises: variantOf(task.sheet, task.kinds, number).map(write),
        })),
      };

/** Of a list the letters; of a setting how near what it comes to has to be. */
function answerOf(part: DrawnPart) {
  const { form } = part.definition;
  if (isList(form)) return { answer: shown(part, part.answer).figure };
  return {
    answer: asAsked(part, part.answer),
    tolerance: form ? fromSI(form.aim.near, form.aim.unit) : asAsked(part, part.tolerance),
  };
}

const partRecord = ({ definition }: DrawnPart) => ({
  label: definition.label,
  ...(isList(definition.form) ? listRecord(definition.form) : numberRecord(definition)),
});

const listRecord = (form: ListForm) => ({
  form: form.kind,
  ...(form.kind === 'order' && { first: form.first, last: form.last }),
  options: Object.fromEntries(
    form.options.map(({ words }, i) => [letterOf(i), plain(words)] as const),
  ),
});

const numberRecord = ({ unit, decimals, quantity, form }: DrawnPart['definition']) => ({
  unit,
  decimals,
  ...(form?.kind === 'set' && {
    form: form.kind,
    scale: form.scale,
    wanted: { quantity: form.aim.quantity.name, words: plain(wantedInWords(form)) },
  }),
  ...(quantity.positive !== undefined && {
    positive: quantity.positive,
    negative: quantity.negative,
  }),
});

const asAsked = ({ definition: { unit } }: DrawnPart, value: number): number => fromSI(value, unit);
