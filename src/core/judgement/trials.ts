import type { Sides } from '../axle.ts';
import { deviatesOf, triedOn, type Uniform } from '../uncertainty/monte-carlo.ts';
import type { CarSetup } from './bench-setup.ts';
import type { WheelChange } from './fitted-car.ts';
import { pairModel, type PairModel } from './pair-model.ts';

/** How many trials a judgement takes where nothing else is said. */
export const USUAL_TRIALS = 10_000;

/** The luck of many trials, drawn once and used for every place of a slider, so that intervals do not flicker. */
export const luckOf = (
  { inputs }: Pick<CarSetup, 'inputs'>,
  uniform: Uniform,
  count: number = USUAL_TRIALS,
): Float64Array => deviatesOf(inputs, count, uniform);

/** Columns of trials from the first on, one for each result. */
export interface TrialColumns {
  readonly done: number;
  readonly columns: readonly Float64Array[];
}

/** Trials of a change, as far as they have come. Plain data: it can be handed to a worker and back. */
export interface TrialRun {
  readonly of: number;
  readonly before: TrialColumns;
  readonly after: TrialColumns;
}

/**
 * Begins the trials of a change.
 *
 * @param earlier a run of the same car and luck with another change, whose results before are used again; both
 * have to leave both wheels alike, or neither
 */
export function startTrials(
  { inputs }: CarSetup,
  luck: Float64Array,
  earlier?: TrialRun,
): TrialRun {
  const nothing: TrialColumns = { done: 0, columns: [] };
  return {
    of: luck.length / inputs.length,
    before: earlier?.before ?? nothing,
    after: nothing,
  };
}

/**
 * Goes on with trials by up to so many: a few hundred in a frame keep a page alive, all at once suit a worker. Same car, change and
 * luck as before.
 */
export function continueTrials(
  run: TrialRun,
  { car, inputs }: CarSetup,
  changes: Sides<WheelChange>,
  luck: Float64Array,
  count: number,
): TrialRun {
  const to = Math.min(run.of, run.after.done + count);
  const models = pairModel(car, changes);
  const grown = (had: TrialColumns, model: PairModel['before']): TrialColumns =>
    had.done >= to
      ? had
      : joined(
          had,
          triedOn({
            inputs,
            model,
            results: models.slots.length,
            deviates: luck,
            from: had.done,
            to,
          }),
          run.of,
        );
  return {
    ...run,
    before: grown(run.before, models.before),
    after: grown(run.after, models.after),
  };
}

/** Whether all trials are done. */
export const isDone = ({ of, after }: TrialRun): boolean => after.done >= of;

/** Room for all trials is made once; what was there is kept in place and never written again. */
function joined(
  { done, columns }: TrialColumns,
  more: readonly Float64Array[],
  of: number,
): TrialColumns {
  const grown = more.map((column, j) => {
    const whole = columns[j] ?? new Float64Array(of);
    whole.set(column, done);
    return whole;
  });
  return { done: done + (more[0]?.length ?? 0), columns: grown };
}
