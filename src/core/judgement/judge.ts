import type { Sides } from '../axle.ts';
import { combinedOf, expanded, slopesOf, type Combined } from '../uncertainty/linear.ts';
import { normalBelow } from '../uncertainty/normal.ts';
import type { CarSetup } from './bench-setup.ts';
import type { Finding, Judgement, Sure, Weight } from './finding.ts';
import type { WheelChange } from './fitted-car.ts';
import { INPUT_IDS } from './inputs.ts';
import { judgedQuantity, type JudgedId } from './judged-quantities.ts';
import { pairModel } from './pair-model.ts';
import { scrubSigns } from './scrub-sign.ts';

/** A result is divided by only where it is this many standard uncertainties from nought. */
const CLEAR_OF_NOUGHT = 2;

/**
 * Judges a change along the slope of the formulas: quick enough to follow a slider. Each result before and after, their
 * difference and their ratio have intervals of their own, ±2u, with all that both sides have in common cancelled.
 *
 * A slope is straight: where a difference hangs on the product of two doubts, as bearing loads do where one length makes up
 * for another, its interval is too narrow, and trials (judge-by-trials.ts) have it right.
 *
 * Results that this car cannot have, or that something unknown would be needed for, are left out. Where both wheels are
 * alike, the left one stands for both.
 *
 * Source: JCGM 100:2008, 5.1 and 6.2.
 */
export function judge({ car, inputs }: CarSetup, changes: Sides<WheelChange>): Judgement {
  const { slots, before, after } = pairModel(car, changes);
  const count = slots.length;
  const both = slopesOf((values) => [...before(values), ...after(values)], inputs);
  const part = (j: number): Combined =>
    combinedOf(
      both.values[j] ?? NaN,
      both.contributions.map((row) => row[j] ?? NaN),
    );
  const findings = slots.flatMap(({ id, place }, j): readonly Finding[] => {
    const [was, is] = [part(j), part(count + j)];
    if (!Number.isFinite(was.value) || !Number.isFinite(is.value)) return [];
    const apart = combinedOf(
      is.value - was.value,
      is.contributions.map((of, i) => of - (was.contributions[i] ?? NaN)),
    );
    const ratio = ratioOf(id, was, is);
    return [
      {
        id,
        place,
        before: sureOf(id, was),
        after: sureOf(id, is),
        difference: evenly(apart),
        ...(ratio && { ratio: sureOf(id, ratio) }),
        weights: weightsOf(is),
        weightsOfDifference: weightsOf(apart),
      },
    ];
  });
  return {
    by: 'slope',
    trials: 0,
    failed: 0,
    findings,
    scrub: scrubSigns(findings, ({ value, standard }) =>
      standard === 0 ? stepAbove(value) : normalBelow(value / standard),
    ),
  };
}

const stepAbove = (value: number): number => (value > 0 ? 1 : value < 0 ? 0 : 0.5);

/** b/a with its slope, (δb − (b/a) δa)/a. */
function ratioOf(id: JudgedId, was: Combined, is: Combined): Combined | undefined {
  if (!mayDivide(id, was)) return undefined;
  const ratio = is.value / was.value;
  return combinedOf(
    ratio,
    is.contributions.map((of, i) => (of - ratio * (was.contributions[i] ?? NaN)) / was.value),
  );
}

/** Whether a result may be divided by: never near nought, and far enough from it where it could change its sign. */
const mayDivide = (
  id: JudgedId,
  { value, standard }: Pick<Sure, 'value' | 'standard'>,
): boolean => {
  if (!(Math.abs(value) > 1e-12)) return false;
  return !hasSign(id) || Math.abs(value) > CLEAR_OF_NOUGHT * standard;
};

/** Whether a result may have either sign. */
const hasSign = (id: JudgedId): boolean => judgedQuantity(id).positive !== undefined;

/** ±2u; of a life, which varies as a power of loads, with its logarithm in place of itself, so that it stays above nought. */
function sureOf(id: JudgedId, { value, standard }: Combined): Sure {
  const plusMinus = expanded(standard);
  if (judgedQuantity(id).kind === 'life' && value > 0) {
    const times = Math.exp(plusMinus / value);
    return { value, standard, least: value / times, most: value * times };
  }
  return evenly({ value, standard });
}

function evenly({ value, standard }: Pick<Combined, 'value' | 'standard'>): Sure {
  const plusMinus = expanded(standard);
  return { value, standard, least: value - plusMinus, most: value + plusMinus };
}

/** What a result hangs on, the heaviest first; below a thousandth an input does not count. */
const weightsOf = ({ shares }: Combined): readonly Weight[] =>
  INPUT_IDS.map((input, i) => ({ input, share: shares[i] ?? 0 }))
    .filter(({ share }) => share >= 0.001)
    .sort((a, b) => b.share - a.share);
