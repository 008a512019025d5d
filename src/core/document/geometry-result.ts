import type { Geometry } from '../geometry.ts';
import type { GeometryResult } from './corner-result.ts';
import { inDegrees, inMillimetres, tripleInMillimetres } from './edge-units.ts';

/** The corner's geometry as a document's result has it. */
export const geometryResult = (geometry: Geometry): GeometryResult => ({
  inclination_deg: inDegrees(geometry.inclination),
  caster_deg: inDegrees(geometry.caster),
  includedAngle_deg: inDegrees(geometry.includedAngle),
  scrubRadius_mm: inMillimetres(geometry.scrubRadius),
  trail_mm: inMillimetres(geometry.trail),
  spindleOffset_mm: inMillimetres(geometry.spindleOffset),
  casterOffsetAtCentre_mm: inMillimetres(geometry.casterOffsetAtCentre),
  axisDistance_mm: inMillimetres(geometry.axisDistance),
  groundPoint_mm: tripleInMillimetres(geometry.groundPoint),
  contactCentre_mm: tripleInMillimetres(geometry.contactCentre),
});
