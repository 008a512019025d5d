import type { Sides } from '../axle.ts';
import { rodLever } from '../tie-rod.ts';
import type { Fault } from '../fault.ts';
import type { CarSetup } from './bench-setup.ts';
import { cornerOfValues } from './corner-of-values.ts';
import type { WheelChange } from './fitted-car.ts';
import { modelOf, NOTHING_DONE, slotsOf, valuesOf } from './model.ts';

/** The steepest that an axis may lean in all, in radians: what corner documents allow too. */
const STEEPEST_LEAN = (68 * Math.PI) / 180;
const LEAST_LEVER = 0.001;

/** Why the best estimates of a car make none that can stand and steer, or one that cannot take a change. */
export function standingFaults(
  setup: CarSetup,
  change: Sides<WheelChange> = NOTHING_DONE,
): readonly Fault[] {
  const best = setup.inputs.map(({ value }) => value);
  const value = valuesOf(best);
  const { lowerUp_mm, upperUp_mm } = setup.known;
  if (setup.car.axisFrom === 'pivots' && !(upperUp_mm.value > lowerUp_mm.value))
    return [
      {
        path: 'car.values.upperUp_mm',
        wrong: 'puts the upper pivot no higher than the lower one',
        allowed: 'a height above that of the lower pivot',
      },
    ];
  const { axis, tieRod } = cornerOfValues(setup.car, value);
  if (Math.acos(Math.min(1, axis.direction.z)) > STEEPEST_LEAN)
    return [
      {
        path: 'car.values',
        wrong: 'lays the steering axis down',
        allowed: 'pivots whose axis is within 68 degrees of the vertical',
      },
    ];
  if (Math.abs(rodLever(axis, tieRod)) < LEAST_LEVER)
    return [
      {
        path: 'car.values.rodAhead_mm',
        wrong: 'leaves the tie rod no lever about the steering axis',
        allowed: 'a tie rod that passes the axis by a millimetre or more',
      },
    ];
  return resultFaults(setup, change, best);
}

/** A scrub radius that is no number, or a radius that is none, comes of a change that takes the wheel away. */
function resultFaults(
  { car }: CarSetup,
  change: Sides<WheelChange>,
  best: readonly number[],
): readonly Fault[] {
  const results = modelOf(car, change, change.left === change.right)(best);
  const scrub = results[slotsOf(true).findIndex(({ id }) => id === 'scrubRadius')];
  if (scrub !== undefined && Number.isFinite(scrub)) return [];
  return [
    {
      path: '',
      wrong: 'leaves no wheel that can be reckoned with',
      allowed: 'a change of a size that a car can take',
    },
  ];
}
