import type { Fault } from '../fault.ts';
import { distanceToLine, type Line } from '../line.ts';
import type { Vector } from '../vector.ts';
import { inMillimetres } from './edge-units.ts';
import { RANGES } from './ranges.ts';

/** A point of the carrier that lies too far from the steering axis to belong to it; mostly metres among millimetres. */
export function faultsOfReach(path: string, point: Vector, axis: Line): readonly Fault[] {
  const away_mm = inMillimetres(distanceToLine(axis, point));
  const { most } = RANGES.carrierReach;
  if (away_mm <= most) return [];
  return [
    {
      path,
      wrong: `lies ${Math.round(away_mm)} mm from the steering axis`,
      allowed: `a point within ${most} mm of the axis, in millimetres like all the others`,
    },
  ];
}
