import type { Measurement } from './measurement.ts';

/** From the values of the measurements, in their order, to several results, always as many. */
export type ModelOfSeveral = (inputs: ArrayLike<number>) => readonly number[];

/** Gives numbers from 0, included, to 1, excluded, each as likely: a seeded generator, so that all see the same. */
export type Uniform = () => number;

/** What to try, how often, and by which generator. */
export interface Trials {
  readonly inputs: readonly Measurement[];
  readonly model: ModelOfSeveral;
  /** How many results the model gives. */
  readonly results: number;
  /** How many trials: 10 000 for a look, more for the last digit. */
  readonly count: number;
  readonly uniform: Uniform;
}

/**
 * Carries distributions through a model by drawing every input at random, over and over: one column of values
 * for each result, unsorted, in the order of the trials. The columns belong together row by row.
 *
 * @throws RangeError for a count that is no whole number above 0
 *
 * Source: JCGM 101:2008, clause 7.
 */
export const tried = ({
  inputs,
  model,
  results,
  count,
  uniform,
}: Trials): readonly Float64Array[] =>
  triedOn({ inputs, model, results, deviates: deviatesOf(inputs, count, uniform) });

/**
 * The random deviations of many trials, trial after trial, one for each input: with mean 0 and standard deviation 1.
 * Kept and used again, they let intervals follow a slider without flickering: every place of it sees the same luck.
 *
 * @throws RangeError for a count that is no whole number above 0
 */
export function deviatesOf(
  inputs: readonly Pick<Measurement, 'shape'>[],
  count: number,
  uniform: Uniform,
): Float64Array {
  if (!(Number.isInteger(count) && count > 0)) {
    throw new RangeError(`${count} trials; allowed: a whole number above 0`);
  }
  const deviates = new Float64Array(count * inputs.length);
  let at = 0;
  for (let trial = 0; trial < count; trial++)
    for (const { shape } of inputs) deviates[at++] = deviate(shape, uniform);
  return deviates;
}

/** What to try with deviations that have been drawn before; all of them, or some in the middle. */
export interface TrialsOn extends Pick<Trials, 'inputs' | 'model' | 'results'> {
  readonly deviates: Float64Array;
  /** First trial, and the one before which to stop. */
  readonly from?: number;
  readonly to?: number;
}

/** The columns of `tried`, from deviations that have been drawn before. */
export function triedOn({
  inputs,
  model,
  results,
  deviates,
  from = 0,
  to = deviates.length / inputs.length,
}: TrialsOn): readonly Float64Array[] {
  const columns = Array.from({ length: results }, () => new Float64Array(to - from));
  const drawn = new Float64Array(inputs.length);
  for (let trial = from; trial < to; trial++) {
    for (const [i, { value, standard }] of inputs.entries())
      drawn[i] = value + standard * (deviates[trial * inputs.length + i] ?? NaN);
    const out = model(drawn);
    for (const [j, column] of columns.entries()) column[trial - from] = out[j] ?? NaN;
  }
  return columns;
}

/**
 * A random deviation of mean 0 and standard deviation 1.
 *
 * Source: JCGM 101:2008, 6.4 for the shapes, and C.4 for the normal one (Box and Muller).
 */
function deviate(shape: Measurement['shape'], uniform: Uniform): number {
  switch (shape) {
    case 'rectangular':
      return Math.sqrt(3) * (2 * uniform() - 1);
    case 'triangular':
      return Math.sqrt(6) * (uniform() + uniform() - 1);
    case 'normal':
      // 1 − r is above 0, so that its logarithm is a number.
      return Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  }
}
