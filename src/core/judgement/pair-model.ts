import type { Sides } from '../axle.ts';
import type { FittedCar, WheelChange } from './fitted-car.ts';
import { isAlike, modelOf, NOTHING_DONE, slotsOf, type Slot } from './model.ts';

/** The same car before and after a change, from the same values: what both have in common cancels in the difference. */
export interface PairModel {
  readonly slots: readonly Slot[];
  /** All results before, in the order of the slots. */
  readonly before: (inputs: ArrayLike<number>) => readonly number[];
  readonly after: (inputs: ArrayLike<number>) => readonly number[];
}

/** The two models that a change is judged by. */
export function pairModel(car: FittedCar, changes: Sides<WheelChange>): PairModel {
  const alike = isAlike(car, changes);
  return {
    slots: slotsOf(alike),
    before: modelOf(car, NOTHING_DONE, alike),
    after: modelOf(car, changes, alike),
  };
}
