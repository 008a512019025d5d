import type { Change } from '../change.ts';
import { outerDiameter } from '../tyre/dimensions.ts';
import type { FittedCar, Values, WheelChange } from './fitted-car.ts';

/**
 * A change at one wheel as differences from the car as it stands, with what is not sure about it: the new wheel’s inset, the
 * camber that is set, the make of the new tyre. Another tyre keeps the share of its outer diameter that it stands on,
 * R′ = R D′/D.
 */
export function madeChange(
  car: FittedCar,
  value: Values,
  change: WheelChange,
  loadedRadius: number,
): Change {
  const { spacer, inset, tyre, camberAtUpperPivot, camberAtCarrier } = change;
  const beside = value('camberSet_deg');
  const atTop = camberAtUpperPivot !== 0;
  return {
    spacer,
    inset: inset === undefined ? 0 : inset + value('newInset_mm') - value('inset_mm'),
    loadedRadius: tyre === undefined ? 0 : loadedRadius * (growth(car, value, change) - 1),
    camberAtUpperPivot: atTop ? camberAtUpperPivot + beside : 0,
    camberAtCarrier: !atTop && camberAtCarrier !== 0 ? camberAtCarrier + beside : camberAtCarrier,
  };
}

/** Outer diameter of the tyre after a change over that before, D′/D (1 + ε), with the make’s ε. */
export const growth = (
  car: Pick<FittedCar, 'tyre'>,
  value: Values,
  { tyre }: WheelChange,
): number =>
  tyre === undefined
    ? 1
    : (outerDiameter(tyre) / outerDiameter(car.tyre)) * (1 + value('tyreMake_percent'));
