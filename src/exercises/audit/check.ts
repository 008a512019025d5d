import type { Exercise } from '../exercise.ts';

/** What has to hold of every exercise of every kind. */
export interface Check {
  readonly id: string;
  /** What holds, as the end of a sentence about a kind: `keeps its slips apart`. */
  readonly says: string;
  /** What does not hold of an exercise, a line each. */
  readonly faults: (exercise: Exercise) => readonly string[];
  /** Tried on one exercise in five: words hardly change from seed to seed, and reading them takes long. */
  readonly sampled?: boolean;
}

/** What a check found, over many exercises. */
export interface Found {
  readonly check: Check;
  /** How many exercises have a fault. */
  readonly exercises: number;
  /** The first few, each with its seed. */
  readonly first: readonly string[];
}

const SHOWN = 3;
const ONE_IN = 5;

/** Tries checks on exercises, and says what they found. */
export function tryChecks(
  checks: readonly Check[],
  exercises: readonly Exercise[],
): readonly Found[] {
  return checks.flatMap((check) => {
    const first: string[] = [];
    let count = 0;
    for (const [i, exercise] of exercises.entries()) {
      if (check.sampled && i % ONE_IN > 0) continue;
      const lines = check.faults(exercise);
      if (lines.length === 0) continue;
      count += 1;
      if (first.length < SHOWN) first.push(...lines.map((line) => `${exercise.seed}: ${line}`));
    }
    return count > 0 ? [{ check, exercises: count, first: first.slice(0, SHOWN) }] : [];
  });
}
