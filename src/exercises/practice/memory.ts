import { FSRSAlgorithm, Rating, type Grade } from 'ts-fsrs';
import { inOrder, isUnaided, type Attempt } from '../record/attempt.ts';
import type { DayOf } from '../record/day.ts';

/** How well a kind is remembered, by the usual model of forgetting. */
export interface Memory {
  /** Days after which nine of ten would still be right. */
  readonly stability_days: number;
  /** How hard the kind is for this learner, from 1 to 10. */
  readonly difficulty: number;
  /** Number of the day on which it was last recalled. */
  readonly day: number;
  /** Whether it was not known then. */
  readonly missed: boolean;
}

/** Only the model's arithmetic: it asks no clock and draws nothing. */
const MODEL = new FSRSAlgorithm({ enable_short_term: false, enable_fuzz: false });

/** Stability after a first success: what all gaps are measured by. */
export const FIRST_STABILITY_days = MODEL.init_stability(Rating.Good);

/**
 * What is remembered of a kind, worked out from its attempts. The first attempt of a day is the recall that counts;
 * what follows on the same day is practice at it.
 *
 * @param attempts at one kind, in any order
 * @returns undefined where there is no attempt
 */
export function memoryOf(attempts: readonly Attempt[], dayOf: DayOf): Memory | undefined {
  let memory: Memory | undefined;
  for (const attempt of inOrder(attempts)) {
    const day = dayOf(attempt.at);
    if (memory && day <= memory.day) continue;
    const { stability, difficulty } = MODEL.next_state(
      memory ? { stability: memory.stability_days, difficulty: memory.difficulty } : null,
      memory ? day - memory.day : 0,
      gradeOf(attempt, memory === undefined),
    );
    memory = { stability_days: stability, difficulty, day, missed: !attempt.firstTry };
  }
  return memory;
}

/** The chance that a kind is still known on a day, from 0 to 1. */
export const chanceKnown = ({ stability_days, day }: Memory, today: number): number =>
  MODEL.forgetting_curve(Math.max(0, today - day), stability_days);

/** Help is no fault, but what was done with it is not yet recalled alone; a first exercise comes with an example anyway. */
function gradeOf(attempt: Attempt, first: boolean): Grade {
  if (!attempt.firstTry) return Rating.Again;
  return first || isUnaided(attempt) ? Rating.Good : Rating.Hard;
}
