import { fromSI, toSI } from '#core/units/convert.ts';
import { UNITS } from '#core/units/units.ts';
import type { DrawnPart, Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { grade } from '../grade.ts';
import { shown } from '../in-words.ts';
import type { Entry } from '../own-road.ts';
import { readEntry } from '../read-entry.ts';
import type { Check } from './check.ts';
import { asAsked, carefulEntries, entriesAfter, threeDigits } from './learners.ts';

/** What holds of the marks that learners get, each working in a way of their own. */
export const LEARNER_CHECKS: readonly Check[] = [
  careful('asked', 'to the decimals asked for', asAsked),
  careful('three-digits', 'to three digits', threeDigits),
  careful('unrounded', 'nowhere', (_part, value) => value),
  {
    id: 'typed',
    says: 'marks the answer right as it is typed, with its word or with its sign',
    faults: (exercise) =>
      [true, false].flatMap((withWord) => {
        const entries = exercise.parts.map((part) => typedAnswer(part, withWord));
        const { earned, possible } = grade(exercise, entries);
        return earned === possible ? [] : [`${earned} of ${possible}`];
      }),
  },
  {
    id: 'slip-once',
    says: 'lets a slip that is carried on cost its own part and nothing else',
    faults: (exercise) =>
      exercise.parts.flatMap((part, index) =>
        part.slips().flatMap(({ id, value }) => {
          const { earned, possible } = grade(exercise, entriesAfter(exercise, index, value));
          const cost = part.definition.weight ?? 1;
          return possible - earned === cost ? [] : [`${id} costs ${possible - earned}`];
        }),
      ),
  },
  {
    id: 'last-alone',
    says: 'takes the last answer alone for the whole',
    faults: (exercise) => {
      const last = exercise.parts.at(-1);
      const entries = exercise.parts.map((part) => (part === last ? part.answer : undefined));
      const { earned, possible } = grade(exercise, entries);
      return earned === possible ? [] : [`${earned} of ${possible}`];
    },
  },
  {
    id: 'noughts',
    says: 'gives nothing to noughts',
    faults: (exercise) => {
      const noughts = exercise.parts.map(() => 0);
      const { earned } = grade(exercise, noughts);
      return earned === 0 ? [] : [`${earned} earned`];
    },
  },
  {
    id: 'no-guessing',
    says: 'ends with what cannot be guessed, and gives letters by themselves nothing',
    faults: (exercise) => {
      const { parts } = exercise;
      const letters = parts.map(({ definition, answer }) =>
        isList(definition.form) ? answer : undefined,
      );
      return [
        ...(isList(parts.at(-1)?.definition.form) ? ['ends with a letter'] : []),
        ...(grade(exercise, letters).earned > 0 ? ['letters earn by themselves'] : []),
      ];
    },
  },
  {
    id: 'set',
    says: 'can be set by the steps of its scale, and is not right as it stands',
    faults: (exercise) =>
      exercise.parts.flatMap(({ definition: { form, unit }, answer }, i) => {
        if (form?.kind !== 'set') return [];
        const { start, step, least, most } = form.scale;
        const wanted = fromSI(answer, unit);
        const nearest = start + step * Math.round((wanted - start) / step);
        const fits = (setting: number): boolean =>
          grade(exercise, entriesAfter(exercise, i, toSI(setting, unit))).parts[i]?.verdict ===
          'right';
        return [
          ...(fits(nearest) ? [] : [`${nearest} does not fit, the nearest step to ${wanted}`]),
          ...(fits(start) ? ['fits from the start'] : []),
          ...(wanted > least && wanted < most ? [] : [`${wanted} is off the scale`]),
        ];
      }),
  },
];

function careful(
  id: string,
  where: string,
  write: (part: DrawnPart, value: number) => number,
): Check {
  return {
    id,
    says: `marks right whoever has the method and rounds every value ${where}`,
    faults: (exercise: Exercise) =>
      grade(exercise, carefulEntries(exercise, write)).parts.flatMap(({ verdict }, i) =>
        verdict === 'right' ? [] : [`part ${i} ${verdict}`],
      ),
  };
}

function typedAnswer(part: DrawnPart, withWord: boolean): Entry {
  const { answer, definition } = part;
  if (isList(definition.form)) {
    const letters = shown(part, answer).figure;
    const read = readEntry({ text: withWord ? letters : letters.toLowerCase() }, definition);
    return read.kind === 'value' ? read.value : undefined;
  }
  const signed = definition.quantity.positive !== undefined;
  const { unit, decimals } = definition;
  const size = Math.abs(fromSI(answer, unit)).toFixed(decimals);
  const word = answer < 0 ? 'negative' : 'positive';
  const sign = answer < 0 ? '−' : signed ? '+' : '';
  const reading =
    withWord && signed
      ? readEntry({ text: size, word }, definition)
      : readEntry({ text: `${sign}${size} ${UNITS[unit].symbol}` }, definition);
  return reading.kind === 'value' ? reading.value : undefined;
}
