import type { Measurement } from './measurement.ts';

/** From the values of the measurements, in their order, to one result. */
export type Model = (inputs: ArrayLike<number>) => number;

/** A result with its uncertainty, and what each measurement has to do with it. */
export interface Combined {
  /** The model at the best estimates. */
  readonly value: number;
  /** Combined standard uncertainty. */
  readonly standard: number;
  /** What each measurement alone does to the result when it is off by its standard uncertainty, with its sign. */
  readonly contributions: readonly number[];
  /** The share of each in the variance, from 0 to 1; they add up to 1, or are all 0 without any doubt. */
  readonly shares: readonly number[];
}

/** What each measurement does to each of several results. */
export interface Slopes {
  /** The model at the best estimates. */
  readonly values: readonly number[];
  /** For each measurement, in their order, what it does to each result when it is off by its standard uncertainty. */
  readonly contributions: readonly (readonly number[])[];
}

/**
 * The slope of a model over ±u of each measurement, c_i u_i = ½ [f(x_i + u_i) − f(x_i − u_i)], for all of its results at
 * once. A measurement without doubt contributes nothing and costs nothing.
 *
 * Source: JCGM 100:2008, note 2 of 5.1.3.
 */
export function slopesOf(
  model: (inputs: ArrayLike<number>) => readonly number[],
  inputs: readonly Measurement[],
): Slopes {
  const best = Float64Array.from(inputs, ({ value }) => value);
  const values = model(best);
  const contributions = inputs.map(({ value: middle, standard }, i) => {
    if (standard === 0) return values.map(() => 0);
    best[i] = middle + standard;
    const above = model(best);
    best[i] = middle - standard;
    const below = model(best);
    best[i] = middle;
    return values.map((_, j) => ((above[j] ?? NaN) - (below[j] ?? NaN)) / 2);
  });
  return { values, contributions };
}

/**
 * Carries uncertainties through a model along its slope: u² = Σ (c_i u_i)². Independent inputs, and a model that is nearly
 * straight over ±u.
 *
 * Source: JCGM 100:2008, 5.1.2.
 */
export function combined(model: Model, inputs: readonly Measurement[]): Combined {
  const { values, contributions } = slopesOf((from) => [model(from)], inputs);
  return combinedOf(
    values[0] ?? NaN,
    contributions.map(([part = NaN]) => part),
  );
}

/** A result with what each measurement contributes to it. */
export function combinedOf(value: number, contributions: readonly number[]): Combined {
  const variance = contributions.reduce((sum, part) => sum + part ** 2, 0);
  return {
    value,
    standard: Math.sqrt(variance),
    contributions,
    shares: contributions.map((part) => (variance === 0 ? 0 : part ** 2 / variance)),
  };
}

/**
 * Expanded uncertainty U = k u: with k = 2 it holds about 95 in 100 where the result is nearly normal.
 *
 * Source: JCGM 100:2008, 6.2 and 6.3.
 */
export const expanded = (standard: number, coverageFactor = 2): number => coverageFactor * standard;
