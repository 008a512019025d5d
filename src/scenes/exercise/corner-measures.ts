import { heading, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { along, type Vector } from '#core/vector.ts';
import { flat, type Sketch } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
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
  leverAtRoad: 'from the middle of the tyre on the road square to the axis',
  inclination: 'the angle between upright and the axis',
  caster: 'the angle between upright and the axis',
  camber: 'the angle between upright and the middle of the wheel',
  pivotsLevel: 'level, from the lower pivot to the upper one',
  pivotsUp: 'upright, from the lower pivot to the upper one',
  lowerUp: 'upright, from the road to the lower pivot',
  upperUp: 'upright, from the road to the upper pivot',
  lowerOut: 'level, from the middle of the car to the lower pivot',
  upperOut: 'level, from the middle of the car to the upper pivot',
  contactOut: 'level, from the middle of the car to the middle of the tyre',
  lowerAhead: 'level, from the upright through the wheel centre to the lower pivot',
  upperAhead: 'level, from the upright through the wheel centre to the upper pivot',
  lowerLean: 'level, at the road, from below the lower pivot to the axis',
  tyreTrail: 'level, at the road, from the middle of the tyre back to the side force',
  sideLever: 'level, at the road, from the axis back to the side force',
  wheelMove: 'level, from where the middle of the wheel was to where it is',
} as const;

/** How far a dimension line keeps from what it measures, in millimetres of the car. */
const BELOW = 42;
const ABOVE = 55;
const FAR_ABOVE = 1.16;
const BESIDE = 60;
const ASIDE = 44;
/** How much of a loaded radius is seen of an axis that is not drawn whole. */
export const STUB = 0.42;

/** How a measure is drawn: a wrong one dashed, on a line of its own beside the right one. */
export interface MeasurePen {
  readonly key: string;
  readonly wrong?: boolean;
  /** How much is seen of the axis, so that an angle stands at what is seen. */
  readonly axis?: 'whole' | 'low' | 'high' | 'pivots' | 'none' | undefined;
  readonly before?: Corner | undefined;
  /** How far behind the contact centre a side force counts, in metres. */
  readonly behind?: number | undefined;
  /** Where the middle of the car stands in the drawing: nearer than it is. */
  readonly middle?: number;
}

export function measureMark(
  of: PictureMeasure,
  says: string,
  sketch: Sketch,
  corner: Corner,
  { key, wrong = false, axis: seen, middle = 0, before, behind = 0 }: MeasurePen,
): Mark {
  const { contactCentre, groundPoint, axisAtCentre } = measure(corner);
  const { wheelCentre, axis, loadedRadius } = corner;
  const at = (place: Vector): Point => flat(sketch, place);
  const [road, hub] = [at(contactCentre), at(wheelCentre)];
  const radius = 1000 * loadedRadius;
  const aside = wrong ? 1 : 0;
  const pivots = corner.pivots ?? { lower: groundPoint, upper: axisAtCentre };
  const [lower, upper] = [at(pivots.lower), at(pivots.upper)];
  const top = at(atHeight(axis, wheelCentre.z + loadedRadius));
  const dimension = (from: Point, to: Point, fromFoot: Point, toFoot: Point): Mark => ({
    ...{ kind: 'dimension', key, role: 'guide', from, to, fromFoot, toFoot, text: says },
    ...(wrong && { wrong }),
  });
  const level = (from: Point, to: Point, up: number): Mark =>
    dimension(from, to, point(from.across, up), point(to.across, up));
  const upright = (from: Point, to: Point, across: number): Mark =>
    dimension(from, to, point(across, from.up), point(across, to.up));
  const angle = (vertex: Point, towards: Point): Mark => ({
    ...{ kind: 'angle', key, role: 'guide', vertex, towards, text: says },
    ...(wrong && { wrong }),
  });
  const lowest = Math.min(road.across, lower.across, upper.across);
  switch (of) {
    case 'scrubRadius':
    case 'trail':
      return level(at(groundPoint), road, road.up - BELOW - aside * 0.11 * radius);
    case 'spindleOffset':
    case 'casterOffsetAtCentre':
      return level(at(axisAtCentre), hub, hub.up + (wrong ? -ABOVE : ABOVE));
    case 'lean':
      return level(at(groundPoint), at(axisAtCentre), hub.up + radius * (FAR_ABOVE + aside * 0.13));
    case 'loadedRadius': {
      const out = road.across + (sketch.view === 'side' ? radius : 100) + BESIDE;
      return upright(road, hub, out);
    }
    case 'shortest':
    case 'leverAtRoad': {
      const from = of === 'shortest' ? hub : road;
      const foot = nearest(at(groundPoint), top, from);
      return dimension(from, foot, from, foot);
    }
    case 'inclination':
    case 'caster':
      if (seen === 'pivots') return angle(lower, upper);
      if (seen === 'high') return angle(at(axisAtCentre), top);
      return angle(
        at(groundPoint),
        seen === 'low' ? at(atHeight(axis, groundPoint.z + STUB * loadedRadius)) : top,
      );
    case 'camber':
      return angle(road, hub);
    case 'pivotsLevel':
      return level(lower, upper, upper.up + ABOVE + aside * 40);
    case 'pivotsUp':
      return upright(lower, upper, lowest - BESIDE - aside * 40);
    case 'lowerUp':
      return upright(point(lower.across, road.up), lower, lowest - BESIDE);
    case 'upperUp':
      return upright(point(upper.across, road.up), upper, lowest - 2.4 * BESIDE);
    case 'lowerOut':
      return level(point(middle, lower.up), lower, lower.up);
    case 'upperOut':
      return level(point(middle, upper.up), upper, upper.up);
    case 'contactOut':
      return level(point(middle, road.up), road, road.up - BELOW);
    case 'lowerAhead':
      return level(point(hub.across, lower.up), lower, lower.up - BELOW);
    case 'upperAhead':
      return level(point(hub.across, upper.up), upper, upper.up + BELOW);
    case 'lowerLean':
      return level(
        point(lower.across, road.up),
        at(groundPoint),
        road.up - BELOW - aside * 0.11 * radius,
      );
    case 'tyreTrail':
    case 'sideLever': {
      const force = at(along(contactCentre, -behind, heading(corner)));
      const up =
        road.up - (of === 'tyreTrail' ? BELOW : BELOW + 0.11 * radius) - aside * 0.11 * radius;
      return level(of === 'tyreTrail' ? road : at(groundPoint), force, up);
    }
    case 'wheelMove':
      return level(
        flat(sketch, measure(before ?? corner).contactCentre),
        road,
        road.up - BELOW - aside * 0.11 * radius,
      );
  }
}

/** A lever of another length than the right one, from where the force counts. */
export interface WrongLever {
  readonly at: 'road' | 'centre';
  readonly length: number;
}

/** Drawn beside the right one, along it. */
export function leverMark({ at, length }: WrongLever, sketch: Sketch, corner: Corner): Mark {
  const { contactCentre, groundPoint } = measure(corner);
  const from = flat(sketch, at === 'road' ? contactCentre : corner.wheelCentre);
  const top = flat(sketch, atHeight(corner.axis, corner.wheelCentre.z + corner.loadedRadius));
  const foot = nearest(flat(sketch, groundPoint), top, from);
  const run = Math.hypot(foot.across - from.across, foot.up - from.up) || 1;
  const [x, y] = [(foot.across - from.across) / run, (foot.up - from.up) / run];
  const to = point(from.across + 1000 * length * x, from.up + 1000 * length * y);
  // Above the right one, square to it.
  const lift = (p: Point): Point =>
    point(p.across + ASIDE * Math.abs(y), p.up + ASIDE * Math.abs(x));
  return {
    ...{ kind: 'dimension', key: 'wrong-lever', role: 'guide', from, to, wrong: true },
    ...{ fromFoot: lift(from), toFoot: lift(to), text: 'yours' },
  };
}

/** The point of a line that lies nearest to another point, in the drawing. */
function nearest(from: Point, to: Point, other: Point): Point {
  const [x, y] = [to.across - from.across, to.up - from.up];
  const share = ((other.across - from.across) * x + (other.up - from.up) * y) / (x * x + y * y);
  return point(from.across + share * x, from.up + share * y);
}
