import { describe, expect, test, vi } from 'vitest';
import { tryChecks, type Check } from '#exercises/audit/check.ts';
import { CHECKS } from '#exercises/audit/checks.ts';
import { figureFaults, figuresOf } from '#exercises/audit/figures.ts';
import { simulate, simulationFaults } from '#exercises/audit/simulate.ts';
import type { Exercise } from '#exercises/exercise.ts';
import { plain } from '#exercises/phrase.ts';
import { KIND_IDS } from '#exercises/registry.ts';
import { respond } from '#exercises/respond.ts';
import { exercisesOf, registered, written } from './every-kind.ts';
import { TEXTBOOK } from './textbook.ts';
import { TEXTBOOK_CHECKS } from './textbook-checks.ts';

vi.setConfig({ testTimeout: 600_000 });

/** A share of what `npm run audit:exercises` tries; that takes its time, and goes through ten thousand seeds. */
const SEEDS = Number(process.env['EXERCISE_SEEDS'] ?? 300);
/** Enough to count six hundred different answers. */
const FOR_FIGURES = 5000;
/** What somebody’s value may be in true ones. */
const WILD = [-1e12, -1e4, -50, -20, -3, 0, 1e-6, 20, 50, 1e4, 1e12];

test('every kind in the folder is registered under its own id', () => {
  expect(written.map(({ id }) => id).toSorted()).toEqual(KIND_IDS.toSorted());
  expect(registered.map(({ id }) => id)).toEqual(KIND_IDS);
});

test('there are kinds of every level, and all are checked step by step', () => {
  expect(new Set(registered.map(({ level }) => level))).toEqual(new Set([1, 2, 3]));
  expect(registered.filter(({ asks }) => asks.length < 2)).toEqual([]);
});

test('every kind has its answers a second time, and nothing is left of kinds that are gone', () => {
  expect(Object.keys(TEXTBOOK).toSorted()).toEqual(KIND_IDS.toSorted());
});

describe.each(registered)('$id', (kind) => {
  const exercises = exercisesOf(kind, SEEDS);

  test.each<Check>([...CHECKS, ...TEXTBOOK_CHECKS])('$says', (check) => {
    expect(tryChecks([check], exercises).flatMap(({ first }) => first)).toEqual([]);
  });

  test('ends as it should for learners with and without mistakes, and for guesses', () => {
    expect(simulationFaults(simulate(kind.id, exercises))).toEqual([]);
  });

  test('finds a sound item soon, has 600 answers that can be told apart and no rare signature', () => {
    expect(figureFaults(figuresOf(exercisesOf(kind, FOR_FIGURES)))).toEqual([]);
  });

  test('has a word for any number, however wild, wherever it is entered', () => {
    for (const exercise of exercises.slice(0, 10)) {
      const { parts } = exercise;
      for (const [wild, { definition, answer }] of parts.entries()) {
        // A setting is kept on its scale by whoever reads it.
        if (definition.form) continue;
        for (const factor of WILD) {
          const entries = parts.map((part, i) =>
            i === wild ? factor * answer : 1.3 * part.answer,
          );
          for (const index of parts.keys()) {
            const { words, road } = respond(exercise, entries, index);
            expect(plain(words)).not.toMatch(/NaN|Infinity/);
            expect(() => road?.()).not.toThrow();
          }
        }
      }
    }
  });

  test('gives the same exercise for the same seed', () => {
    const shown = (exercise: Exercise): string =>
      JSON.stringify([exercise.item, exercise.parts, plain(exercise.question())]);
    for (const exercise of exercises.slice(0, 50))
      expect(shown(kind.exercise(exercise.seed))).toBe(shown(exercise));
  });
});
