import { heading, outboard } from '#core/corner.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Vector } from '#core/vector.ts';
import type { Dimension, Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { GUESS, named, paperUnit, type MeasurePlace } from './measure-place.ts';
import { flat, path } from './sketch.ts';
import { valueOf } from './standing.ts';

/** A level length of the corner: from the axis to the wheel's point, along a direction of the wheel. */
interface Span {
  readonly from: Vector;
  readonly to: Vector;
  readonly along: Vector;
  /** Where the dimension line lies above the points on paper; below if negative. In paper units. */
  readonly away: number;
}

/** Scrub radius or trail: between the axis and the contact centre on the road, with the lever's tinted band. */
export function roadMeasure(id: 'scrubRadius' | 'trail', place: MeasurePlace): Mark[] {
  const { standing, sketch } = place;
  const { groundPoint, contactCentre } = standing.geometry;
  const span: Span = {
    from: groundPoint,
    to: contactCentre,
    along: id === 'scrubRadius' ? outboard(standing.corner) : heading(standing.corner),
    away: sketch.view === 'top' ? -44 : -Math.min(36, roomBelowRoad(place)),
  };
  const mark = dimension(id, place, span);
  const depth = 9 * paperUnit(place.window);
  const start = mark.from;
  const end = point(
    start.across + mark.toFoot.across - mark.fromFoot.across,
    start.up + mark.toFoot.up - mark.fromFoot.up,
  );
  const band =
    sketch.view === 'top'
      ? around(start, end, depth / 2)
      : [start, end, point(end.across, end.up + depth), point(start.across, start.up + depth)];
  const lever = path(band, { key: `${id}-band`, role: 'lever', line: 'none', filled: true });
  return [{ ...lever, quantity: id }, mark, ...guessed(id, place, mark)];
}

/** Spindle or caster offset: between the axis and the wheel centre at hub height. */
export function hubMeasure(
  id: 'spindleOffset' | 'casterOffsetAtCentre',
  place: MeasurePlace,
): Mark[] {
  const { standing, sketch, window } = place;
  const { axisAtCentre } = standing.geometry;
  const spot: Mark = {
    kind: 'spot',
    key: `${id}-axis`,
    role: 'axis',
    at: flat(sketch, axisAtCentre),
  };
  const mark = dimension(id, place, {
    from: axisAtCentre,
    to: standing.corner.wheelCentre,
    along: id === 'spindleOffset' ? outboard(standing.corner) : heading(standing.corner),
    away: sketch.view === 'top' ? 30 : Math.min(100, 105 / paperUnit(window)),
  });
  return [spot, mark, ...guessed(id, place, mark)];
}

/** Where a dimension line below the road still lies on the paper, in paper units. */
function roomBelowRoad({ standing, window }: MeasurePlace): number {
  const bottom = window.centre.up - window.height / 2;
  const room = (1000 * standing.geometry.contactCentre.z - bottom) / paperUnit(window);
  return Math.max(10, room - 8);
}

function dimension(id: QuantityId, place: MeasurePlace, span: Span): Dimension {
  const { sketch, standing, units, window } = place;
  const from = flat(sketch, span.from);
  const to = flat(sketch, span.to);
  const ahead = directionOnPaper(place, span.along);
  const away = span.away * paperUnit(window);
  // Beside the points, upward on paper whichever way the direction runs.
  const turn = ahead.across >= 0 ? away : -away;
  const fromFoot = point(from.across - turn * ahead.up, from.up + turn * ahead.across);
  const run = (to.across - from.across) * ahead.across + (to.up - from.up) * ahead.up;
  return {
    kind: 'dimension',
    key: id,
    role: 'guide',
    quantity: id,
    from,
    to,
    fromFoot,
    toFoot: point(fromFoot.across + run * ahead.across, fromFoot.up + run * ahead.up),
    text: named(id, valueOf(id, standing), units),
  };
}

/** Where the dimension would have ended with the reader's guess: a dashed line across it. */
function guessed(
  id: QuantityId,
  place: MeasurePlace,
  { from, to, fromFoot, toFoot }: Dimension,
): Mark[] {
  const guess = place.guesses[id];
  if (guess === undefined) return [];
  const size = 1000 * valueOf(id, place.standing);
  const run = Math.hypot(toFoot.across - fromFoot.across, toFoot.up - fromFoot.up);
  if (run === 0 || size === 0) return [];
  const share = (1000 * guess) / size;
  const end = (start: Point, finish: Point): Point =>
    point(
      start.across + share * (finish.across - start.across),
      start.up + share * (finish.up - start.up),
    );
  const foot = end(fromFoot, toFoot);
  const head = point(from.across + foot.across - fromFoot.across, to.up + foot.up - toFoot.up);
  const line = path([head, foot], {
    key: `${id}-guess`,
    role: 'guide',
    line: 'hidden',
    closed: false,
  });
  return [line, { kind: 'label', key: `${id}-guess-name`, role: 'guide', at: foot, text: GUESS }];
}

function directionOnPaper({ sketch }: MeasurePlace, direction: Vector): Point {
  const { across, up } = flat(sketch, direction);
  const size = Math.hypot(across, up);
  return point(across / size, up / size);
}

function around(from: Point, to: Point, half: number): Point[] {
  const run = Math.hypot(to.across - from.across, to.up - from.up) || 1;
  const across = (-(to.up - from.up) / run) * half;
  const up = ((to.across - from.across) / run) * half;
  return [
    point(from.across + across, from.up + up),
    point(to.across + across, to.up + up),
    point(to.across - across, to.up - up),
    point(from.across - across, from.up - up),
  ];
}
