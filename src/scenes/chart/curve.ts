import type { CornerModel } from '#core/car/car.ts';
import { SHOWN, type UnitSystem } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { standing, valueOf } from '../corner/standing.ts';
import type { Place } from '../paper/frame.ts';
import { parameterSI } from '../parameter-text.ts';
import { PARAMETERS, type ParameterId } from '../parameters.ts';
import type { Setting } from '../setting.ts';

/** A quantity over the whole range of a parameter, everything else as it is set. Values as they are shown. */
export interface Curve {
  readonly of: QuantityId;
  readonly over: ParameterId;
  readonly units: UnitSystem;
  readonly points: readonly Place[];
}

const SAMPLES = 60;

/** Computes the curve; what the parameter itself is set to does not matter. */
export function curveOf(
  model: CornerModel,
  setting: Setting,
  of: QuantityId,
  over: ParameterId,
  units: UnitSystem,
): Curve {
  const { least, most } = PARAMETERS[over];
  const points = Array.from({ length: SAMPLES + 1 }, (_, i) =>
    pointAt(model, { ...setting, [over]: least + ((most - least) * i) / SAMPLES }, of, over, units),
  );
  return { of, over, units, points };
}

/** The point of the curve where a corner stands. */
export const pointAt = (
  model: CornerModel,
  setting: Setting,
  of: QuantityId,
  over: ParameterId,
  units: UnitSystem,
): Place => ({
  x: fromSI(parameterSI(over, setting[over]), SHOWN[units][PARAMETERS[over].kind].unit),
  y: shownQuantity(of, valueOf(of, standing(model, setting)), units),
});

/** A quantity in the unit it is shown in. */
export const shownQuantity = (id: QuantityId, value: number, units: UnitSystem): number =>
  fromSI(value, SHOWN[units][quantity(id).kind].unit);
