import type { CornerModel } from '#core/car/car.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Setting } from '#scenes/setting.ts';
import { outcomesOf } from './outcomes';
import { isPredictionSlip, slipOf } from './prediction-slips';

/** What was asked: a quantity, where the figure began and went to, and the wrong roads to recognise. */
export interface Asked {
  readonly of: QuantityId;
  readonly model: CornerModel;
  readonly from: Setting;
  readonly to: Setting;
  readonly slips: string;
  readonly tolerance: number;
}

/**
 * The wrong road that a prediction took, in words; empty where it is none that is known. Fetched when somebody has
 * predicted: until then a lesson does without.
 *
 * @param guess in SI
 * @throws Error for a wrong road of no name
 */
export function roadTaken(guess: number, { of, model, from, to, slips, tolerance }: Asked): string {
  const known = slips
    .split(/[\s,]+/)
    .filter(Boolean)
    .map((name) => {
      if (isPredictionSlip(name)) return name;
      throw new Error(`<Predict slips="${name}">: not a known wrong road`);
    });
  return slipOf(guess, known, outcomesOf(of, model, from, to), tolerance);
}
