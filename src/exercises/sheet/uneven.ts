import { fromSI } from '#core/units/convert.ts';
import type { Exercise } from '../exercise.ts';
import { givensOf } from '../givens.ts';
import type { ExerciseKind } from '../registry.ts';
import { chanceOfThree } from './chance.ts';
import { isRight, MANY } from './item-statistics.ts';
import type { MarkedResult } from './mark-result.ts';
import type { Sheet } from './sheet.ts';
import { exerciseAt } from './variant.ts';

/** A third of a class, by one of the numbers that the exercise gives. */
export interface Third {
  /** The numbers from and to, as printed. */
  readonly from: number;
  readonly to: number;
  readonly n: number;
  readonly right: number;
}

export interface Uneven {
  /** Member of the item (`spacer_mm`), or `answer` for the size of the last answer. */
  readonly given: string;
  readonly thirds: readonly Third[];
  /** How likely such a difference is by chance alone, taking in how many numbers were looked at. */
  readonly chance: number;
}

/** One student: the numbers of the own variant, and whether it is right. */
export interface Answered {
  readonly numbers: Readonly<Record<string, number>>;
  readonly right: boolean;
}

const SPREAD = 0.15;
const CHANCE = 0.01;
/** A third with fewer students than this says nothing. */
const LEAST = 20;

/** Where each exercise of a sheet is harder for some students than for others by the numbers they got. */
export const unevenItems = (
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  results: readonly MarkedResult[],
): readonly (readonly Uneven[])[] =>
  sheet.items.map((_item, position) =>
    results.length < MANY
      ? []
      : unevenGivens(
          results.map(({ result, items }) => ({
            numbers: numbersOf(exerciseAt(sheet, kinds, position, result.number)),
            right: isRight(items[position]),
          })),
        ),
  );

/** The numbers that an exercise gives, and the size of its last answer. */
function numbersOf({ item, parts }: Exercise): Answered['numbers'] {
  const last = parts.at(-1);
  const members: readonly (readonly [string, unknown])[] = Object.entries(item);
  const given = members.filter(([name, value]) => givensOf({ [name]: value }).length > 0);
  return {
    ...(Object.fromEntries(given) as Record<string, number>),
    ...(last && { answer: Math.abs(fromSI(last.answer, last.definition.unit)) }),
  };
}

/**
 * Where an exercise is harder for some numbers than for others: for each number that it gives, the class is cut in
 * thirds from small to large, and their shares compared. Told from a hundred answers on, where the shares spread by
 * more than 0.15 and chance alone would do so in less than one of a hundred exercises, all numbers looked at together.
 */
export function unevenGivens(answered: readonly Answered[]): readonly Uneven[] {
  if (answered.length < MANY) return [];
  const names = Object.keys(answered[0]?.numbers ?? {});
  const cut = names.flatMap((given) => {
    const thirds = thirdsBy(answered, given);
    return thirds ? [{ given, thirds }] : [];
  });
  return cut
    .map(({ given, thirds }) => ({
      given,
      thirds,
      chance: Math.min(1, cut.length * chanceOfThree(thirds)),
    }))
    .filter(({ thirds, chance }) => {
      const shares = thirds.map(({ right, n }) => right / n);
      return chance < CHANCE && Math.max(...shares) - Math.min(...shares) > SPREAD;
    });
}

/** Equal numbers stay together; undefined where no three groups of a size come out. */
function thirdsBy(answered: readonly Answered[], given: string): readonly Third[] | undefined {
  const sorted = answered
    .flatMap(({ numbers, right }) => {
      const amount = numbers[given];
      return amount === undefined ? [] : [{ amount, right }];
    })
    .sort((a, b) => a.amount - b.amount);
  const cuts = [1 / 3, 2 / 3].map((share) => sorted[Math.floor(share * sorted.length)]?.amount);
  const groups = [0, 1, 2].map((third) =>
    sorted.filter(({ amount }) => cuts.filter((cut) => amount >= (cut ?? NaN)).length === third),
  );
  if (groups.some(({ length }) => length < LEAST)) return undefined;
  return groups.map((group) => ({
    from: group[0]?.amount ?? NaN,
    to: group.at(-1)?.amount ?? NaN,
    n: group.length,
    right: group.filter(({ right }) => right).length,
  }));
}
