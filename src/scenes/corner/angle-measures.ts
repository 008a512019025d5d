import { along, type Vector } from '#core/vector.ts';
import type { Mark } from '../marks.ts';
import { point, rightward, type Point } from '../plane.ts';
import { GUESS, named, type MeasurePlace } from './measure-place.ts';
import { wheelAxes } from './part-axes.ts';
import { flat, path } from './sketch.ts';
import { valueOf } from './standing.ts';

type AngleId = 'inclination' | 'caster' | 'camber';

/** The lean of the axis or of the wheel from upright, with the reader's guess as a dashed ray. */
export function angleMeasure(id: AngleId, place: MeasurePlace): Mark[] {
  const { sketch, standing, units, guesses } = place;
  const { lower, upper } = standing.corner.pivots;
  const [vertex, towards] = id === 'camber' ? wheelRay(place) : [lower, upper];
  const from = flat(sketch, vertex);
  const to = flat(sketch, towards);
  const angle: Mark = {
    kind: 'angle',
    key: id,
    role: 'guide',
    quantity: id,
    vertex: from,
    towards: to,
    text: named(id, valueOf(id, standing), units),
  };
  const guess = guesses[id];
  return guess === undefined
    ? [angle]
    : [angle, ...ray(id, from, to, leansRight(id, place) * guess)];
}

/** Up the wheel's plane from the contact centre; from the wheel centre where only the hub is on the paper. */
function wheelRay({ sketch, standing, window }: MeasurePlace): [Vector, Vector] {
  const { corner, geometry } = standing;
  const { up } = wheelAxes(corner);
  const bottom = window.centre.up - window.height / 2;
  return flat(sketch, geometry.contactCentre).up > bottom
    ? [geometry.contactCentre, along(corner.wheelCentre, 0.2, up)]
    : [corner.wheelCentre, along(corner.wheelCentre, 0.13, up)];
}

/** Whether a positive angle leans to the right of the drawing (+1) or to the left (−1). */
function leansRight(id: AngleId, { sketch }: MeasurePlace): 1 | -1 {
  const outboardOrForward = rightward(sketch.view, sketch.side);
  return id === 'camber' ? outboardOrForward : (-outboardOrForward as 1 | -1);
}

function ray(id: AngleId, vertex: Point, towards: Point, angle: number): Mark[] {
  const reach = 0.9 * Math.hypot(towards.across - vertex.across, towards.up - vertex.up);
  const end = point(vertex.across + reach * Math.sin(angle), vertex.up + reach * Math.cos(angle));
  return [
    path([vertex, end], { key: `${id}-guess`, role: 'guide', line: 'hidden', closed: false }),
    { kind: 'label', key: `${id}-guess-name`, role: 'guide', at: end, text: GUESS },
  ];
}
