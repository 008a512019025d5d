import { describe, expect, test } from 'vitest';
import {
  dueKinds,
  kindsAllTheSame,
  nextDue,
  type Choosing,
} from '#exercises/practice/choose-kinds.ts';
import { CONFUSABLE, confusableWith } from '#exercises/practice/confusable.ts';
import { easierKind } from '#exercises/practice/easier-kind.ts';
import { kindsInMix } from '#exercises/practice/kinds-in-mix.ts';
import type { ListedKind } from '#exercises/practice/listed-kind.ts';
import type { Attempt } from '#exercises/record/attempt.ts';
import { universalDay } from '#exercises/record/day.ts';
import { KIND_IDS } from '#exercises/registry.ts';
import { attempt, COURSE } from './made.ts';

const ids = (kinds: readonly ListedKind[]): readonly string[] => kinds.map(({ id }) => id);

const on = (today: number, attempts: readonly Attempt[], kinds = COURSE): Choosing => ({
  kinds,
  attempts,
  today,
  horizonDay: 100,
  dayOf: universalDay,
});

const tried = (day: number, more: Partial<Attempt> = {}): readonly Attempt[] =>
  COURSE.map(({ id }) => attempt(id, day, more));

describe('what is chosen', () => {
  test('is half new at most, easy ones first, and nothing whose prerequisite is new', () => {
    expect(ids(dueKinds(on(0, []), 6)).toSorted()).toEqual(['one-0', 'one-1', 'one-2']);
    const begun = [attempt('one-0', 0)];
    expect(ids(dueKinds(on(1, begun), 12)).toSorted()).toEqual(
      ['one-1', 'one-2', 'one-3', 'two-0', 'two-1', 'two-2'].toSorted(),
    );
  });

  test('is what is due, the most forgotten first', () => {
    const attempts = COURSE.map(({ id }, i) => attempt(id, i));
    expect(ids(dueKinds(on(90, attempts), 3)).toSorted()).toEqual(['one-0', 'one-1', 'one-2']);
  });

  test('is nothing where all has been recalled today, unless it is asked for all the same', () => {
    expect(dueKinds(on(5, tried(5)), 6)).toEqual([]);
    expect(nextDue(on(5, tried(5)))).toBeGreaterThan(5);
    expect(kindsAllTheSame(on(5, tried(5)), 6)).toHaveLength(6);
  });

  test('comes back the next day after a miss', () => {
    const attempts = tried(5).map((one) => ({ ...one, firstTry: one.kind !== 'two-3' }));
    expect(ids(dueKinds(on(6, attempts), 6))).toEqual(['two-3']);
  });

  test('is the same for the same record', () => {
    const attempts = COURSE.map(({ id }, i) => attempt(id, i % 5, { firstTry: i % 3 > 0 }));
    const chosen = ids(dueKinds(on(40, attempts), 6));
    expect(ids(dueKinds(on(40, attempts.toReversed()), 6))).toEqual(chosen);
  });

  test('never is one kind over and over', () => {
    const few = (count: number): readonly string[] =>
      ids(kindsAllTheSame(on(5, tried(5), COURSE.slice(0, count)), 6));
    expect(few(1)).toEqual(['one-0']);
    expect(few(2)).toEqual(['one-0', 'one-1', 'one-0', 'one-1']);
    expect(few(3)).toHaveLength(6);
  });

  test('has beside it what it is taken for, where there is room', () => {
    const kinds: readonly ListedKind[] = [
      'scrub-from-pivots',
      'caster-from-pivots',
      'spindle-offset-from-scrub',
    ].map((id) => ({ id, lesson: id, level: 2, needs: [] }));
    const attempts = [
      attempt('scrub-from-pivots', 0, { firstTry: false }),
      attempt('caster-from-pivots', 0),
      attempt('spindle-offset-from-scrub', 0),
    ];
    expect(ids(dueKinds(on(1, attempts, kinds), 6))).toEqual([
      'scrub-from-pivots',
      'spindle-offset-from-scrub',
    ]);
    expect(ids(dueKinds(on(1, attempts, kinds), 1))).toEqual(['scrub-from-pivots']);
  });
});

test('kinds that are taken for each other are kinds of the course, and each of the other', () => {
  for (const kind of CONFUSABLE) {
    expect(KIND_IDS).toContain(kind);
    for (const other of confusableWith(kind)) expect(confusableWith(other)).toContain(kind);
  }
});

describe('kinds are asked', () => {
  const lessons = (kinds: readonly ListedKind[]): readonly string[] => [
    ...new Set(kinds.map(({ lesson }) => lesson)),
  ];

  test('of lessons that are read to their end, or that have been practised', () => {
    const isRead = (lesson: string): boolean => lesson === 'one';
    expect(lessons(kindsInMix(COURSE, [], isRead, {}))).toEqual(['one']);
    expect(lessons(kindsInMix(COURSE, [attempt('three-2', 0)], isRead, {}))).toEqual([
      'one',
      'three',
    ]);
  });

  test('of others, or of fewer, where the reader says so', () => {
    const wishes = { one: false, two: true };
    expect(lessons(kindsInMix(COURSE, [attempt('one-1', 0)], () => false, wishes))).toEqual([
      'two',
    ]);
  });
});

describe('an easier one first', () => {
  const easier = (id: string): string | undefined => {
    const kind = COURSE.find((one) => one.id === id);
    return kind && easierKind(kind, COURSE)?.id;
  };

  test('is a step lower in the same lesson', () => {
    expect(easier('two-3')).toBe('two-1');
    expect(easier('two-1')).toBe('two-0');
  });

  test('is what the lesson looks back to, where the lesson has nothing easier', () => {
    expect(easier('two-0')).toBe('one-0');
  });

  test('is not there at the very beginning', () => {
    expect(easier('one-0')).toBeUndefined();
  });
});
