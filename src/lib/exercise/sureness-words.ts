import type { Sureness } from '#exercises/record/attempt.ts';

interface LevelWords {
  readonly level: Sureness;
  readonly name: string;
  /** What the level states, as odds. */
  readonly odds: string;
}

/** The three levels as they are asked and shown; the odds are those of `src/exercises/practice/calibration.ts`. */
export const LEVEL_WORDS: readonly LevelWords[] = [
  { level: 1, name: 'Unsure', odds: 'less than two in three' },
  { level: 2, name: 'Fairly sure', odds: 'two in three to four in five' },
  { level: 3, name: 'Sure', odds: 'more than four in five' },
];
