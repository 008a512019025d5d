import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import type { Vector } from '#core/vector.ts';
import { flat, type Sketch } from '../corner/sketch.ts';
import type { Dimension, Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';

/** What can be dimensioned on the bare corner of an exercise. */
export type PictureMeasure = keyof typeof MEASURE_WORDS;

/** Where each of them lies, for whoever does not see it. */
export const MEASURE_WORDS = {
  scrubRadius: 'level, at the road, from the axis to the middle of the tyre',
  trail: 'level, at the road, from the axis to the middle of the tyre',
  spindleOffset: 'level, at the height of the wheel centre, from the axis to the wheel centre',
  casterOffsetAtCentre:
    'level, at the height of the wheel centre, from the axis to the wheel centre',
  loadedRadius: 'upright, from the road to the wheel centre',
  lean: 'level, from the axis at the road to the axis at the height of the wheel centre',
  shortest: 'from the wheel centre square to the axis',
  inclination: 'the angle between upright and the axis',
  caster: 'the angle between upright and the axis',
  camber: 'the angle between upright and the middle of the wheel',
} as const;

/** How far a dimension line keeps from what it measures, in millimetres of the car. */
const BELOW = 42;
const ABOVE = 55;
const FAR_ABOVE = 1.16;
const BESIDE = 60;

export function measureMark(
  of: PictureMeasure,
  says: string,
  sketch: Sketch,
  corner: Corner,
): Mark {
  const { contactCentre, groundPoint, axisAtCentre } = measure(corner);
  const { wheelCentre, axis, loadedRadius } = corner;
  const at = (place: Vector): Point => flat(sketch, place);
  const [road, hub] = [at(contactCentre), at(wheelCentre)];
  const level = (from: Point, to: Point, up: number): Mark =>
    dimension(of, says, from, to, point(from.across, up), point(to.across, up));
  switch (of) {
    case 'scrubRadius':
    case 'trail':
      return level(at(groundPoint), road, road.up - BELOW);
    case 'spindleOffset':
    case 'casterOffsetAtCentre':
      return level(at(axisAtCentre), hub, hub.up + ABOVE);
    case 'lean':
      return level(at(groundPoint), at(axisAtCentre), hub.up + 1000 * loadedRadius * FAR_ABOVE);
    case 'loadedRadius': {
      const out = road.across + (sketch.view === 'side' ? 1000 * loadedRadius : 100) + BESIDE;
      return dimension(of, says, road, hub, point(out, road.up), point(out, hub.up));
    }
    case 'shortest': {
      const [low, high] = [at(groundPoint), at(atHeight(axis, wheelCentre.z + loadedRadius))];
      const foot = nearest(low, high, hub);
      return dimension(of, says, hub, foot, hub, foot);
    }
    case 'inclination':
    case 'caster':
      return {
        kind: 'angle',
        key: of,
        role: 'guide',
        vertex: at(groundPoint),
        towards: at(atHeight(axis, wheelCentre.z + loadedRadius)),
        text: says,
      };
    case 'camber':
      return { kind: 'angle', key: of, role: 'guide', vertex: road, towards: hub, text: says };
  }
}

const dimension = (
  key: string,
  text: string,
  from: Point,
  to: Point,
  fromFoot: Point,
  toFoot: Point,
): Dimension => ({ kind: 'dimension', key, role: 'guide', from, to, fromFoot, toFoot, text });

/** The point of a line that lies nearest to another point, in the drawing. */
function nearest(from: Point, to: Point, other: Point): Point {
  const [x, y] = [to.across - from.across, to.up - from.up];
  const share = ((other.across - from.across) * x + (other.up - from.up) * y) / (x * x + y * y);
  return point(from.across + share * x, from.up + share * y);
}
