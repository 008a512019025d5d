import { fromSI } from '#core/units/convert.ts';
import { INPUT_IDS, INPUTS } from '#core/judgement/inputs.ts';
import type { Uniform } from '#core/uncertainty/monte-carlo.ts';
import { garageBench, garageSetup } from '../../garage-benches.ts';
import { planeResults } from './plane-bench.ts';
import { bestOf, type Numbers } from './plane-car.ts';

/** Results before and after a change, in the units in which they are shown. */
export interface PlanePair {
  readonly before: Numbers;
  readonly after: Numbers;
}

/** What the plane makes of a scenario’s variant at the best estimates: of both wheels and of the axle. */
export function planePair(scenario: string, variant: number): PlanePair {
  const document = garageBench(scenario);
  const best = bestOf(document);
  return {
    before: planeResults(document, best),
    after: planeResults(document, best, document.variants[variant]),
  };
}

/** The same for many cars drawn evenly within the ± of every input. */
export function planeTrials(
  scenario: string,
  variant: number,
  count: number,
  uniform: Uniform,
): readonly PlanePair[] {
  const document = garageBench(scenario);
  const { known } = garageSetup(scenario);
  const best = bestOf(document);
  return Array.from({ length: count }, () => {
    const values: Numbers = Object.fromEntries(
      INPUT_IDS.map((input) => {
        const plusMinus = fromSI(known[input].plusMinus, INPUTS[input].unit);
        return [input, (best[input] ?? NaN) + plusMinus * (2 * uniform() - 1)];
      }),
    );
    return {
      before: planeResults(document, values),
      after: planeResults(document, values, document.variants[variant]),
    };
  });
}
