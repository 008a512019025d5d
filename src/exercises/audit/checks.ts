import type { Exercise } from '../exercise.ts';
import type { Check } from './check.ts';
import { LEARNER_CHECKS } from './learner-checks.ts';
import { NUMBER_CHECKS } from './number-checks.ts';
import { WORD_CHECKS } from './word-checks.ts';

/** What has to hold of every exercise by itself. That its answers are true is seen to elsewhere, without the core. */
export const CHECKS: readonly Check[] = [...NUMBER_CHECKS, ...LEARNER_CHECKS, ...WORD_CHECKS];

/** What does not hold of one exercise. */
export const faultsOf = (exercise: Exercise): readonly string[] =>
  CHECKS.flatMap(({ id, faults }) => faults(exercise).map((line) => `${id}: ${line}`));
