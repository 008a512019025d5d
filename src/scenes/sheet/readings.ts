import type { Car } from '#core/car/car.ts';
import type { Side } from '#core/corner.ts';
import { rodLength } from '#core/tie-rod.ts';
import { toeOf, toeOnRod } from '#core/toe.ts';
import { standing } from '../corner/standing.ts';
import { AS_IT_STANDS, type Setting } from '../setting.ts';
import { LINE_IDS, type Column, type LineId } from './lines.ts';

/** What one column of a sheet says, in radians. */
export type Readings = Readonly<Record<LineId, number>>;

/**
 * What an alignment sheet says of a car, straight ahead and with the tie rods as they were before anything
 * moved or bent. What has been set holds for the left corner, but for a subframe, which carries both.
 */
export function sheetReadings(car: Car, setting: Setting): Readonly<Record<Column, Readings>> {
  const left = readingsOf(car, 'left', { ...setting, steer: 0 });
  const right = readingsOf(car, 'right', { ...AS_IT_STANDS, subframe: setting.subframe });
  const pair = Object.fromEntries(
    LINE_IDS.map((id) => [id, id === 'toe' ? left.toe + right.toe : left[id] - right[id]]),
  ) as Record<LineId, number>;
  return { left, right, pair };
}

function readingsOf(car: Car, side: Side, setting: Setting): Readings {
  const { corner, geometry } = standing(car[side], setting);
  const { camber, caster, inclination, includedAngle } = geometry;
  const { tieRod } = car[side].corner;
  const onRod = tieRod && toeOnRod(corner, rodLength(tieRod));
  return {
    camber,
    caster,
    inclination,
    includedAngle,
    // Where the rod cannot reach there is nothing to hold the wheel: as if it had been set anew.
    toe: onRod?.ok ? onRod.value : toeOf(corner),
  };
}
