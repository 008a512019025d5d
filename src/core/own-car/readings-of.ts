import { contactCentre, outboardSign, type Corner, type Pivots } from '../corner.ts';
import { camberOf } from '../geometry.ts';
import { measured, type Measurement } from '../uncertainty/measurement.ts';
import { READING_IDS, type Readings } from './readings.ts';

/**
 * What somebody with perfect eyes would read on a corner.
 *
 * @param halfRim half the rim’s overall width, in metres
 */
export function readingsOf(
  corner: Corner & { readonly pivots: Pivots },
  halfRim: number,
): Readings {
  const { pivots, wheelCentre, side, spin } = corner;
  const floor = contactCentre(corner).z;
  const rimLine = outboardSign(side) * wheelCentre.y + halfRim;
  const inboard = (y: number): number => rimLine - outboardSign(side) * y;
  return {
    halfRim,
    lowerIn: inboard(pivots.lower.y),
    upperIn: inboard(pivots.upper.y),
    lowerUp: pivots.lower.z - floor,
    upperUp: pivots.upper.z - floor,
    hubUp: wheelCentre.z - floor,
    camber: camberOf(spin),
  };
}

/** Readings and their ± as measurements, in the order in which models take them. */
export const measurementsOf = (readings: Readings, doubts: Readings): readonly Measurement[] =>
  READING_IDS.map((id) => measured(readings[id], doubts[id]));
