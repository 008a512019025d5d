import { readFixing } from '../car/read-fixing.ts';
import type { Fixing } from '../fastening/fixing.ts';
import type { Tyre } from '../tyre/tyre.ts';
import { minus, vector } from '../vector.ts';
import type { BaseParts } from './base-parts.ts';
import type { BenchCarDocument, FixingDocument } from './bench-document.ts';
import { standsApart } from './cross-inputs.ts';
import { straightLoad } from './filled-values.ts';
import type { FittedCar } from './fitted-car.ts';

/** What of a car is taken as it is. */
export function fittedCar(car: BenchCarDocument, tyre: Tyre, base: BaseParts): FittedCar {
  const { tieRod, pivots, hub } = base;
  const outer = minus(tieRod.outer, pivots.lower);
  return {
    axisFrom: car.axisFrom,
    driven: car.drive !== 'rear',
    apart: standsApart(car.values),
    tyre,
    rod: { outer: vector(0, outer.y, outer.z), inner: minus(tieRod.inner, tieRod.outer) },
    hub,
    dutyLoad: straightLoad(hub),
    fixing: car.fixing && fixingOf(car.fixing),
  };
}

/** What holds the wheel, in SI; the document has been read before. */
/** What holds a wheel, in SI. */
export const fixingOf = (document: FixingDocument): Fixing =>
  readFixing({ value: document, path: '', faults: [] });
