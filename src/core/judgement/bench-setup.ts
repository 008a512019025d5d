import type { Sides } from '../axle.ts';
import { setUp } from '../document/set-up.ts';
import { failure, faultsOf, success, type Fault, type Outcome } from '../fault.ts';
import { parseTyre } from '../tyre/parse-tyre.ts';
import { measured, type Measurement } from '../uncertainty/measurement.ts';
import { baseParts } from './base-parts.ts';
import type { BenchCarDocument, BenchDocument, WheelChangeDocument } from './bench-document.ts';
import { isCross, standsApart } from './cross-inputs.ts';
import { filledValues, type FilledValues } from './filled-values.ts';
import { fittedCar } from './fit-car.ts';
import type { FittedCar, WheelChange } from './fitted-car.ts';
import { INPUT_IDS, type InputId } from './inputs.ts';
import { standingFaults } from './standing-faults.ts';
import { changesOf } from './set-up-variants.ts';

/** A car on the bench in SI: what judgements work on. */
export interface CarSetup {
  readonly car: FittedCar;
  /** Every input with its ± and source, what is typical filled in. */
  readonly known: FilledValues;
  /** The same as measurements, in the order of `INPUT_IDS`, as far as models ask for them. */
  readonly inputs: readonly Measurement[];
}

/** The car with the changes to be judged. */
export interface BenchSetup extends CarSetup {
  readonly variants: readonly Sides<WheelChange>[];
}

/**
 * Brings a bench document to SI units.
 *
 * @param document with every number within its range, as `readBench` gives it
 * @returns the faults of what does not fit together: the corner’s own, a tyre that cannot be read, numbers that make no
 * car which can stand and steer, a change that the car cannot take
 */
export function setUpBench(document: BenchDocument): Outcome<BenchSetup> {
  const car = setUpCar(document.car);
  const variants = document.variants.map((variant, i) => changesOf(variant, `variants[${i}]`));
  const faults = [
    ...faultsOf(car),
    ...variants.flatMap(faultsOf),
    ...('lower_mm' in document.car.corner.axis ? [] : camberFaults(document)),
  ];
  if (faults.length > 0 || !car.ok) return failure(...faults);
  const changes = variants.flatMap((variant) => (variant.ok ? [variant.value] : []));
  const unfit = changes.flatMap((change, i) =>
    standingFaults(car.value, change).map((fault) => ({ ...fault, path: `variants[${i}]` })),
  );
  if (unfit.length > 0) return failure(...unfit);
  return success({ ...car.value, variants: changes });
}

/** Brings the car alone to SI units. */
function setUpCar(car: BenchCarDocument): Outcome<CarSetup> {
  const corner = setUp(car.corner);
  const tyre = parseTyre(car.tyre, 'car.tyre');
  if (!corner.ok || !tyre.ok)
    return failure(...faultsAt('car.corner', faultsOf(corner)), ...faultsOf(tyre));
  const base = baseParts(car, corner.value);
  const known = filledValues(car, tyre.value, base);
  const setup: CarSetup = {
    car: fittedCar(car, tyre.value, base),
    known,
    inputs: askedInputs(car).map((id) => measured(known[id].value, known[id].plusMinus)),
  };
  const faults = standingFaults(setup);
  return faults.length === 0 ? success(setup) : failure(...faults);
}

/** All inputs; what left and right differ by, the last of them, only where it is known. */
const askedInputs = ({ values }: BenchCarDocument): readonly InputId[] =>
  standsApart(values) ? INPUT_IDS : INPUT_IDS.filter((id) => !isCross(id));

/** Faults of a part, with the part’s own place before them. */
export const faultsAt = (path: string, faults: readonly Fault[]): readonly Fault[] =>
  faults.map((fault) => ({
    ...fault,
    path: fault.path === '' ? path : `${path}.${fault.path}`,
  }));

/** Camber turns the wheel about the lower pivot: where the axis has none, somebody has to have measured it. */
function camberFaults({ car, variants }: BenchDocument): readonly Fault[] {
  if (car.values.lowerUp_mm !== undefined) return [];
  const wheels = variants.flatMap(
    (variant, i): readonly (readonly [string, WheelChangeDocument])[] =>
      'both' in variant
        ? [[`variants[${i}].both`, variant.both]]
        : [
            [`variants[${i}].left`, variant.left],
            [`variants[${i}].right`, variant.right],
          ],
  );
  return wheels.flatMap(([path, change]) =>
    (['camberAtUpperPivot_deg', 'camberAtCarrier_deg'] as const)
      .filter((key) => (change[key] ?? 0) !== 0)
      .map((key) => ({
        path: `${path}.${key}`,
        wrong:
          'turns the wheel about its lower pivot, but this car’s axis is given by angles alone',
        allowed: '0, or a car with the height of its lower pivot measured (lowerUp_mm)',
      })),
  );
}
