import { radians } from '#core/angle.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Mark } from '../marks.ts';
import { angleMeasure } from './angle-measures.ts';
import { hubMeasure, roadMeasure } from './length-measures.ts';
import { liftMeasure } from './lift-measure.ts';
import type { MeasurePlace } from './measure-place.ts';

/** Up to here a wheel stands straight ahead for the eye. */
const STRAIGHT = radians(0.5);

/**
 * The drawing of a quantity in a view; nothing where the view cannot show it. Lengths turn with the wheel: once it
 * is steered, only the view from above shows them as long as they are.
 */
export function measureMarks(id: QuantityId, place: MeasurePlace): Mark[] {
  const { view } = place.sketch;
  const straight = Math.abs(place.standing.steer) < STRAIGHT;
  const showsAcross = view === 'top' || (view === 'front' && straight);
  const showsAlong = view === 'top' || (view === 'side' && straight);
  switch (id) {
    case 'scrubRadius':
      return showsAcross ? roadMeasure(id, place) : [];
    case 'trail':
      return showsAlong ? roadMeasure(id, place) : [];
    case 'spindleOffset':
      return showsAcross ? hubMeasure(id, place) : [];
    case 'casterOffsetAtCentre':
      return showsAlong ? hubMeasure(id, place) : [];
    case 'inclination':
    case 'camber':
      return view === 'front' ? angleMeasure(id, place) : [];
    case 'lift':
      return view === 'top' ? [] : liftMeasure(place);
    case 'caster':
      return view === 'side' ? angleMeasure(id, place) : [];
    default:
      return [];
  }
}
