import { degrees, radians } from '#core/angle.ts';
import { UNITS } from '#core/units/units.ts';
import type { DrawnPart, Exercise } from './exercise.ts';
import { isList, type ListForm } from './forms/form.ts';
import { letterOf, orderOf } from './forms/rank.ts';
import { directionOf, reachedInWords } from './in-words.ts';
import { given, phrase, type Phrase } from './phrase.ts';

interface Factor {
  readonly times: number;
  /** What an entry so many times too large is, and one as many times too small. */
  readonly large: string;
  readonly small: string;
  /** What has probably happened. */
  readonly because: string;
}

/** Factors that say by themselves what has happened. */
const FACTORS: readonly Factor[] = [
  {
    times: 1000,
    large: 'a thousand times as large',
    small: 'a thousand times as small',
    because: 'metres and millimetres have changed places',
  },
  {
    times: 25.4,
    large: 'twenty-five times as large',
    small: 'twenty-five times as small',
    because: 'inches and millimetres have changed places',
  },
  {
    times: 10,
    large: 'ten times as large',
    small: 'ten times as small',
    because: 'look at the decimal point',
  },
  {
    times: 2,
    large: 'twice as large',
    small: 'half as large',
    because: 'has a diameter stood in for a radius, or both sides of the car for one?',
  },
];

/**
 * The next step for an entry that is on no known road: what its size or sign gives away, and then the hint of
 * the part.
 *
 * @param earlier the learner's values before this part
 * @param hint of the part; empty where it is not to be told
 */
export function nudge(
  exercise: Exercise,
  part: DrawnPart,
  entry: number,
  earlier: readonly number[],
  hint: Phrase,
): Phrase {
  const { form } = part.definition;
  if (isList(form)) return phrase`${outOfOrder(form, part, entry)} ${hint}`;
  if (form) return phrase`${reachedInWords(form, entry)} That is not what is wanted. ${hint}`;
  const seen = observed(exercise, part, entry, [part.answer, part.follow(earlier)]);
  return seen
    ? phrase`${seen} ${hint}`
    : phrase`That does not fit, and none of the usual slips leads there. ${hint}`;
}

/** The first two neighbours that have changed places: two things to compare, and not yet the whole order. */
function outOfOrder(form: ListForm, { answer }: DrawnPart, entry: number): string {
  const { count } = form;
  const right = form.kind === 'order' ? orderOf(answer, count) : [];
  const own = form.kind === 'order' ? orderOf(entry, count) : [];
  for (const [i, place] of own.entries()) {
    const next = own[i + 1];
    if (next !== undefined && right.indexOf(place) > right.indexOf(next))
      return `Not in this order. Begin with two of them: ${letterOf(place)} stands before ${letterOf(next)}; work both out and compare.`;
  }
  return 'That does not fit.';
}

function observed(
  { givens }: Exercise,
  part: DrawnPart,
  entry: number,
  targets: readonly number[],
): Phrase | undefined {
  const { tolerance, answer, definition } = part;
  const near = (value: number): boolean =>
    targets.some((target) => {
      const room = tolerance * Math.max(1, Math.abs(target / answer));
      return Math.abs(value - target) <= room;
    });
  const { dimension } = UNITS[definition.unit];
  const repeated = givens.find(
    ({ unit, si }) =>
      UNITS[unit].dimension === dimension && sameNumber(Math.abs(si), Math.abs(entry)),
  );
  if (repeated) {
    return phrase`${given(Math.abs(repeated.amount), repeated.unit)} is one of the numbers given, not yet what is asked.`;
  }
  if (near(-entry)) {
    return phrase`The size fits, the direction does not: this entry says that ${directionOf(part, entry) || 'the sign is turned round'}.`;
  }
  if (dimension === 'angle' && near(degrees(entry))) {
    return phrase`That is the angle in radians; degrees are asked for.`;
  }
  if (dimension === 'angle' && near(radians(entry))) {
    return phrase`That has been turned into degrees once too often.`;
  }
  for (const { times, large, small, because } of FACTORS) {
    const size =
      near(entry / times) || near(-entry / times)
        ? large
        : near(entry * times) || near(-entry * times)
          ? small
          : undefined;
    if (size !== undefined) {
      const end = because.endsWith('?') ? '' : '.';
      return phrase`About ${size} as what is asked: ${because}${end}`;
    }
  }
  return undefined;
}

const sameNumber = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(a, b);
