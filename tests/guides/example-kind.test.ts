import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { tryChecks, type Check } from '#exercises/audit/check.ts';
import { CHECKS } from '#exercises/audit/checks.ts';
import { figureFaults, figuresOf } from '#exercises/audit/figures.ts';
import { simulate, simulationFaults } from '#exercises/audit/simulate.ts';
import { drawExercise } from '#exercises/exercise.ts';
import { exercisesOf } from '../exercises/every-kind.ts';
import { casterOffsetFromTrail } from './example-kind.ts';
import { blocks, chapter, guide } from './markdown.ts';

const kind = { exercise: (seed: string) => drawExercise(casterOffsetFromTrail, seed) };
const exercises = exercisesOf(kind, 300);

test('the example kind in DEVELOPERS.md is the one that is tried here', () => {
  const file = readFileSync(new URL('./example-kind.ts', import.meta.url), 'utf8');
  expect(blocks(chapter(guide('DEVELOPERS.md'), '## Add an exercise kind'), 'ts')).toEqual([file]);
});

test.each<Check>([...CHECKS])('the example kind $says', (check) => {
  expect(tryChecks([check], exercises).flatMap(({ first }) => first)).toEqual([]);
});

test('the example kind spreads well, and learners end as they should', () => {
  expect(figureFaults(figuresOf(exercisesOf(kind, 5000)))).toEqual([]);
  expect(simulationFaults(simulate(casterOffsetFromTrail.id, exercises))).toEqual([]);
});
