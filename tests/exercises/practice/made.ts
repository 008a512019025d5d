import type { ListedKind } from '#exercises/practice/listed-kind.ts';
import type { Attempt } from '#exercises/record/attempt.ts';
import { DAY_ms } from '#exercises/record/day.ts';

let seeds = 0;

/** An attempt at noon of a day: right, unaided and on a new seed unless said. */
export const attempt = (kind: string, day: number, more: Partial<Attempt> = {}): Attempt => ({
  kind,
  version: 1,
  seed: `seed-${seeds++}`,
  at: (day + 0.5) * DAY_ms,
  help: 0,
  firstTry: true,
  earned: 1,
  possible: 1,
  ...more,
});

/** Kinds of three lessons of four kinds each; each lesson needs the first kind of the one before. */
export const COURSE: readonly ListedKind[] = ['one', 'two', 'three'].flatMap((lesson, i, lessons) =>
  [1, 2, 2, 3].map((level, number) => ({
    id: `${lesson}-${number}`,
    lesson,
    level: level as 1 | 2 | 3,
    needs: i === 0 ? [] : [`${lessons[i - 1] ?? ''}-0`],
  })),
);
