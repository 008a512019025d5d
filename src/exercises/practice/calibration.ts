import type { Attempt, Sureness } from '../record/attempt.ts';
import { wilson } from '../sheet/chance.ts';

/** What a level of sureness states: right in so many of ten, from least to most. */
export interface Stated {
  readonly level: Sureness;
  readonly least: number;
  readonly most: number;
}

/**
 * Two in three and four in five part the levels: where marks for certainty change their best choice.
 *
 * Source: Gardner-Medwin and Gahan 2003, Formative and summative confidence-based assessment.
 */
const LEVELS: readonly [Stated, Stated, Stated] = [
  { level: 1, least: 0, most: 2 / 3 },
  { level: 2, least: 2 / 3, most: 0.8 },
  { level: 3, least: 0.8, most: 1 },
];

/** Before there are so many answers, shares say nothing. */
export const ENOUGH_ANSWERS = 20;

/** What was stated at a level, and what came out. */
export interface Calibrated extends Stated {
  readonly count: number;
  readonly right: number;
  /** Of those right at the first try, and the interval in which that lies with 95 %; absent where there were none. */
  readonly share?: number;
  readonly interval?: readonly [number, number];
  /** Whether so much came out that what was stated is too high, or too low; neither where it may be chance. */
  readonly finding: 'too sure' | 'too modest' | 'fits';
}

/** How many answers have been given with a sureness. */
export const statedAnswers = (attempts: readonly Attempt[]): number =>
  attempts.filter(({ sure }) => sure !== undefined).length;

/** Stated against actual, level by level; undefined before there is enough to compare. */
export function calibration(attempts: readonly Attempt[]): readonly Calibrated[] | undefined {
  if (statedAnswers(attempts) < ENOUGH_ANSWERS) return undefined;
  return LEVELS.map((stated) => {
    const answers = attempts.filter(({ sure }) => sure === stated.level);
    const count = answers.length;
    const right = answers.filter(({ firstTry }) => firstTry).length;
    if (count === 0) return { ...stated, count, right, finding: 'fits' };
    const { value: share, low, high } = wilson(right, count);
    const finding = high < stated.least ? 'too sure' : low > stated.most ? 'too modest' : 'fits';
    return { ...stated, count, right, share, interval: [low, high], finding };
  });
}
