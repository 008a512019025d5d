import { parkingEstimates } from '#core/parking.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Standing } from '../corner/standing.ts';
import type { Setting } from '../setting.ts';
import type { ParkingLook } from './parking-look.ts';
import { SURFACES } from './surfaces.ts';

/** The estimates in the order in which they are shown. */
export const ESTIMATE_IDS = [
  'parkingByGyration',
  'parkingByThirds',
  'parkingByPressure',
] as const satisfies readonly QuantityId[];

/**
 * The three estimates for a wheel as it stands, in N·m. A tyre that is free to roll is not dragged round the
 * axis: its print twists about its own middle, as if there were no scrub radius.
 */
export const parkingNumbers = (
  { geometry, pressure }: Standing,
  { weight }: Setting,
  { width_mm, surface, held }: ParkingLook,
): ReturnType<typeof parkingEstimates> =>
  parkingEstimates({
    load: weight,
    friction: SURFACES[surface].friction,
    pressure,
    print: { width: width_mm / 1000, scrubRadius: held ? geometry.scrubRadius : 0 },
  });
