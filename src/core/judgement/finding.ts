import type { InputId } from './inputs.ts';
import type { JudgedId, ResultPlace } from './judged-quantities.ts';

/** A number that is known only so well, SI. */
export interface Sure {
  /** Best estimate: the model at the best estimates of the inputs. */
  readonly value: number;
  /** Standard uncertainty. */
  readonly standard: number;
  /** Ends of the interval that holds about 95 in 100. */
  readonly least: number;
  readonly most: number;
}

/** Which input a result hangs on: its share in the variance, from 0 to 1. */
export interface Weight {
  readonly input: InputId;
  readonly share: number;
}

/** What a change does to one result. Before and after are of the same car, so that what both have in common cancels. */
export interface Finding {
  readonly id: JudgedId;
  readonly place: ResultPlace;
  readonly before: Sure;
  readonly after: Sure;
  readonly difference: Sure;
  /** After of before; missing where the result before may be nought or change its sign. */
  readonly ratio?: Sure;
  /** What the result after the change hangs on, the heaviest first; inputs without a share are left out. */
  readonly weights: readonly Weight[];
  /** The same of the difference. */
  readonly weightsOfDifference: readonly Weight[];
}

/** What is known of a result’s sign. */
export interface SignKnown {
  /** Sign of the best estimate. */
  readonly sign: 'positive' | 'negative';
  /** How likely the result has it, from 0.5 to 1. */
  readonly chance: number;
  /** Whether that is often enough to say it: 95 in 100. */
  readonly known: boolean;
}

/** Whether a change turns the sign of the scrub radius round. */
export interface ScrubSign {
  readonly place: 'left' | 'right';
  readonly before: SignKnown;
  readonly after: SignKnown;
  /** How likely the signs before and after differ, from 0 to 1. */
  readonly chanceOfFlip: number;
  readonly flips: 'yes' | 'no' | 'unknown';
}

/** What comes of judging one variant. */
export interface Judgement {
  /** How it was reckoned: along the slope of the formulas, or by so many trials. */
  readonly by: 'slope' | 'trials';
  /** Number of trials; 0 along the slope. */
  readonly trials: number;
  /** Trials whose numbers made no car that can stand and steer: they count for nothing. */
  readonly failed: number;
  readonly findings: readonly Finding[];
  readonly scrub: readonly ScrubSign[];
}
