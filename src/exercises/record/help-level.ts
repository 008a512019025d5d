import type { Attempt } from './attempt.ts';

/** So many first-try successes in a row, and help has become a hindrance. */
const ENOUGH_SUCCESSES = 2;

/**
 * How many parts of the next exercise are to be worked for the learner: all for a new kind (a worked example),
 * then one less after each success, none after two successes in a row, one more after a miss. Help fades from
 * the last part backwards: the parts that are worked are the first ones. Hints cost nothing: a success with hints
 * is one, but no proof that help has become a hindrance.
 *
 * Source: worked examples and how to fade them, Renkl and Atkinson 2003 (from memory).
 *
 * @param attempts at one kind, oldest first
 * @param partCount parts of that kind
 */
export function helpLevel(
  attempts: readonly Pick<Attempt, 'help' | 'hints' | 'firstTry'>[],
  partCount: number,
): number {
  let level = partCount;
  let successes = 0;
  for (const { help, hints = 0, firstTry } of attempts) {
    if (!firstTry) {
      successes = 0;
      level = Math.min(partCount, help + 1);
      continue;
    }
    // With a whole example in view it is no proof yet.
    if (help < partCount && hints === 0) successes += 1;
    level = successes >= ENOUGH_SUCCESSES ? 0 : Math.max(0, help - 1);
  }
  return level;
}
