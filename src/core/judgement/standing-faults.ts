import type { Sides } from '../axle.ts';
import { rodLever } from '../tie-rod.ts';
import type { Fault } from '../fault.ts';
import type { CarSetup } from './bench-setup.ts';
import { CROSS_IDS } from './cross-inputs.ts';
import type { BenchCorner, WheelChange } from './fitted-car.ts';
import { isAlike, modelOf, NOTHING_DONE, slotsOf, valuesOf } from './model.ts';
import { standingCorners } from './standing-corners.ts';

/** The steepest that an axis may lean in all, in radians: what corner documents allow too. */
const STEEPEST_LEAN = (68 * Math.PI) / 180;
const LEAST_LEVER = 0.001;

/** Why the best estimates of a car make none that can stand and steer, or one that cannot take a change. */
export function standingFaults(
  setup: CarSetup,
  change: Sides<WheelChange> = NOTHING_DONE,
): readonly Fault[] {
  const { lowerUp_mm, upperUp_mm } = setup.known;
  if (setup.car.axisFrom === 'pivots' && !(upperUp_mm.value > lowerUp_mm.value))
    return [
      {
        path: 'car.values.upperUp_mm',
        wrong: 'puts the upper pivot no higher than the lower one',
        allowed: 'a height above that of the lower pivot',
      },
    ];
  const best = setup.inputs.map(({ value }) => value);
  const { left, right } = standingCorners(setup.car, valuesOf(best));
  if (liesDown(left))
    return [
      {
        path: 'car.values',
        wrong: 'lays the steering axis down',
        allowed: 'pivots whose axis is within 68 degrees of the vertical',
      },
    ];
  if (hasNoLever(left))
    return [
      {
        path: 'car.values.rodAhead_mm',
        wrong: 'leaves the tie rod no lever about the steering axis',
        allowed: 'a tie rod that passes the axis by a millimetre or more',
      },
    ];
  const apart = setup.car.apart ? rightFaults(setup, right) : [];
  return apart.length > 0 ? apart : resultFaults(setup, change, best);
}

const liesDown = ({ axis }: BenchCorner): boolean =>
  Math.acos(Math.min(1, axis.direction.z)) > STEEPEST_LEAN;

const hasNoLever = ({ axis, tieRod }: BenchCorner): boolean =>
  Math.abs(rodLever(axis, tieRod)) < LEAST_LEVER;

/** What the differences make of a right wheel, where the left one can stand and steer: named at the largest of them. */
function rightFaults({ known }: CarSetup, right: BenchCorner): readonly Fault[] {
  const [largest] = CROSS_IDS.toSorted(
    (a, b) => Math.abs(known[b].value) - Math.abs(known[a].value),
  );
  const at = { path: `car.values.${largest ?? ''}`, allowed: 'a smaller difference' };
  if (liesDown(right)) return [{ ...at, wrong: 'lays the right wheel’s steering axis down' }];
  if (hasNoLever(right))
    return [{ ...at, wrong: 'leaves the right wheel’s tie rod no lever about its steering axis' }];
  return [];
}

/** A scrub radius that is no number, or a radius that is none, comes of a change that takes the wheel away. */
function resultFaults(
  { car }: CarSetup,
  change: Sides<WheelChange>,
  best: readonly number[],
): readonly Fault[] {
  const alike = isAlike(car, change);
  const results = modelOf(car, change, alike)(best);
  if (slotsOf(alike).every(({ id }, i) => id !== 'scrubRadius' || Number.isFinite(results[i])))
    return [];
  return [
    {
      path: '',
      wrong: 'leaves no wheel that can be reckoned with',
      allowed: 'a change of a size that a car can take',
    },
  ];
}
