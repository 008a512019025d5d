import { radians } from '../angle.ts';
import type { Corner } from '../corner.ts';
import { failure, success, type Outcome } from '../fault.ts';
import { lineThrough } from '../line.ts';
import { distance, minus } from '../vector.ts';
import { workshopAxis } from '../workshop-axis.ts';
import type { AnglesDocument, PivotsDocument } from './corner-document.ts';
import { inMetres, inMillimetres, pointOf } from './edge-units.ts';
import { RANGES } from './ranges.ts';
import { largerUnitHint } from './read-number.ts';

/** The part of a corner that its axis document gives. */
export type Axis = Pick<Corner, 'axis' | 'pivots'>;

/** Both leans of an axis may reach 60°: together that is 68° from the vertical. */
const STEEPEST_LEAN_deg = 68;

const ALLOWED_LEAN = `an upper pivot above the lower one, the axis within ${STEEPEST_LEAN_deg} degrees of the vertical`;

/** The steering axis of a document, and its pivots where it is given by them. */
export function axisOf(
  document: PivotsDocument | AnglesDocument,
  wheel: Omit<Corner, 'axis'>,
): Outcome<Axis> {
  if ('lower_mm' in document) return axisOfPivots(document);
  const axis = workshopAxis(wheel, {
    inclination: radians(document.inclination_deg),
    caster: radians(document.caster_deg),
    scrubRadius: inMetres(document.scrubRadius_mm),
    trail: inMetres(document.trail_mm),
  });
  return success({ axis });
}

function axisOfPivots({ lower_mm, upper_mm }: PivotsDocument): Outcome<Axis> {
  const lower = pointOf(lower_mm);
  const upper = pointOf(upper_mm);
  const apart_mm = inMillimetres(distance(lower, upper));
  const { least, most } = RANGES.pivotDistance;
  if (!(apart_mm >= least && apart_mm <= most)) {
    const apart = apart_mm === 0 ? 'coincides with' : `is ${shown(apart_mm)} mm from`;
    return wrongUpper(
      `${apart} lower_mm${largerUnitHint(apart_mm, RANGES.pivotDistance)}`,
      `a point ${least} to ${most} mm from lower_mm`,
    );
  }
  const { x, y, z } = minus(upper, lower);
  if (z === 0) return wrongUpper('is level with lower_mm', ALLOWED_LEAN);
  if (z < 0) return wrongUpper('is below lower_mm', ALLOWED_LEAN);
  if (Math.hypot(x, y) > z * Math.tan(radians(STEEPEST_LEAN_deg)))
    return wrongUpper('lays the axis down', ALLOWED_LEAN);
  return success({ axis: lineThrough(lower, upper), pivots: { lower, upper } });
}

const shown = (x: number): number => Number(x.toPrecision(6));

const wrongUpper = (wrong: string, allowed: string): Outcome<never> =>
  failure({ path: 'axis.upper_mm', wrong, allowed });
