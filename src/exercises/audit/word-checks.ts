import type { DrawnPart } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { mostOf } from '../forms/read-list-entry.ts';
import type { Entry } from '../own-road.ts';
import { plain, type Phrase } from '../phrase.ts';
import { respond } from '../respond.ts';
import type { Check } from './check.ts';
import { asAsked, entriesAfter } from './learners.ts';
import { printedSums } from './printed-sums.ts';

/** Fewer letters than this explain nothing. */
const EXPLAINS = 80;
const SAYS = 20;

/** What holds of the words of an exercise. */
export const WORD_CHECKS: readonly Check[] = [
  {
    id: 'four-slips',
    says: 'knows four slips a part, each by its own name',
    sampled: true,
    faults: ({ parts }) =>
      parts.flatMap((part) => {
        const { id, form } = part.definition;
        const slips = part.slips();
        return [
          // Every wrong letter is a slip. Two wrong ways of sorting may come to the same order, and only one is called.
          ...(slips.length >= (form?.kind === 'order' ? 2 : 4)
            ? []
            : [`${id} knows ${slips.length} slips`]),
          ...(isList(form) && form.kind !== 'order' && slips.length !== form.options.length - 1
            ? [`${id} has a letter without words`]
            : []),
          ...(new Set(slips.map((slip) => slip.id)).size === slips.length
            ? []
            : [`${id} has two slips of one name`]),
        ];
      }),
  },
  {
    id: 'slip-texts',
    says: 'answers each slip with its own text, which names what was confused',
    faults: (exercise) =>
      exercise.parts.flatMap((part, index) =>
        part.slips().flatMap((slip) => {
          const text = plain(slip.text());
          return [
            ...(text.includes(slip.confuses) ? [] : [`${slip.id} does not name what it confuses`]),
            ...(text.length > EXPLAINS ? [] : [`${slip.id} explains nothing`]),
            ...[slip.value, asAsked(part, slip.value)].flatMap((value) => {
              const entries = entriesAfter(exercise, index, value);
              const { verdict, words } = respond(exercise, entries, index);
              const isTold = verdict === 'slip' && plain(words) === text;
              return isTold ? [] : [`${slip.id}: ${verdict}`];
            }),
          ];
        }),
      ),
  },
  {
    id: 'sentences',
    says: 'writes sentences without gaps, and never stops at right or wrong',
    sampled: true,
    faults: (exercise) => {
      const answers = exercise.parts.map(({ answer }) => answer);
      const said = exercise.parts.flatMap((part, i): readonly Phrase[] => [
        part.hint(),
        part.solution(),
        ...part.slips().map(({ text }) => text()),
        ...entriesToTry(part).map(
          (entry) => respond(exercise, (answers as Entry[]).with(i, entry), i).words,
        ),
      ]);
      return [exercise.question(), ...said].map(plain).flatMap(sentenceFaults);
    },
  },
  {
    id: 'sums',
    says: 'prints worked solutions with sums that come out as they are printed',
    faults: ({ parts }) => {
      const sums = parts.flatMap(({ solution }) => printedSums(plain(solution())));
      return [
        ...(sums.length > 0 ? [] : ['no sum is printed']),
        ...sums.flatMap(({ text, left, right, unit }) =>
          Math.abs(left - right) <= unit + 1e-9 ? [] : [`${text} gives ${left}`],
        ),
      ];
    },
  },
];

/** Of a list all that there are; of a number what people get wrong without any method. */
const entriesToTry = ({ definition: { form }, answer }: DrawnPart): readonly Entry[] =>
  isList(form)
    ? [undefined, ...Array.from({ length: mostOf(form) }, (_, i) => i + 1)]
    : [0, undefined, answer, -answer, 10 * answer, 0.777 * answer];

const sentenceFaults = (text: string): readonly string[] => [
  ...(/ {2}|undefined|NaN|Infinity|object|^\s|\s$|\s[.,;:?]/.test(text) ? [`gap: ${text}`] : []),
  ...(/[.?]$/.test(text) ? [] : [`no sentence: ${text}`]),
  ...(/^(that|this|it)?( is)? ?(not )?(right|wrong|correct|incorrect)[.!]*$/i.test(text) ||
  text.length < SAYS
    ? [`says nothing: ${text}`]
    : []),
];
