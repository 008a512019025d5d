import type { Corner } from '#core/corner.ts';
import { downInWheelPlane, heading } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { along, vector, type Vector } from '#core/vector.ts';
import { circle, flat, path, type Sketch } from '../corner/sketch.ts';
import type { Arrow, Mark, Scene } from '../marks.ts';
import { point, VIEW_NAMES, type Point, type View } from '../plane.ts';
import { measureMark, MEASURE_WORDS, type PictureMeasure } from './corner-measures.ts';

/** A bare corner as an exercise names it: no car around it, nothing in it that is not spoken of. */
export interface CornerPicture {
  readonly view: View;
  readonly close?: 'road' | 'whole';
  readonly corner: Corner;
  readonly before?: Corner;
  readonly measures?: readonly { readonly of: PictureMeasure; readonly says: string }[];
  readonly points?: readonly { readonly at: PicturePoint; readonly says: string }[];
  readonly forces?: readonly PictureForce[];
}

type PicturePoint = 'contact' | 'ground' | 'centre' | 'axisAtCentre' | 'top' | 'axis';

interface PictureForce {
  readonly at: 'road' | 'centre';
  readonly towards: readonly [number, number, number];
  readonly says: string;
}

/** Half the width of the tyre that is drawn, and how far the axis goes on beyond the wheel, in metres. */
const HALF_WIDTH = 0.1;
const BEYOND = 0.07;
const ARROW = 0.16;

const POINT_WORDS: Readonly<Record<PicturePoint, string>> = {
  contact: 'in the middle of the tyre, on the road',
  ground: 'on the steering axis, where it meets the road',
  centre: 'at the wheel centre',
  axisAtCentre: 'on the steering axis, at the height of the wheel centre',
  top: 'in the middle of the tyre, at its top',
  axis: 'along the steering axis',
};

/** Wheel, road and steering axis, with what an exercise marks on them. */
export function cornerPicture(picture: CornerPicture): Scene {
  const { view, corner, before, measures = [], points = [], forces = [] } = picture;
  const sketch: Sketch = { view, side: corner.side };
  const { contactCentre } = measure(corner);
  const ground: readonly Mark[] =
    view === 'top'
      ? []
      : [{ kind: 'ground', key: 'ground', role: 'ground', up: 1000 * contactCentre.z }];
  return {
    title: `${corner.side === 'left' ? 'Left' : 'Right'} front wheel ${VIEW_NAMES[view]}`,
    description: words(picture),
    window: windowOf(picture, sketch),
    marks: [
      ...ground,
      ...(before ? [tyre(sketch, before, true), axis(sketch, before, true)] : []),
      tyre(sketch, corner),
      middle(sketch, corner),
      axis(sketch, corner),
      ...measures.map(({ of, says }) => measureMark(of, says, sketch, corner)),
      ...points.flatMap(({ at, says }) => pointMarks(at, says, sketch, corner)),
      ...forces.flatMap((force, i) => forceMarks(force, i, sketch, corner)),
    ],
  };
}

function windowOf({ view, close = 'whole', corner, before }: CornerPicture, sketch: Sketch) {
  // The paper keeps still while things move on it.
  const { wheelCentre, loadedRadius } = before ?? corner;
  const hub = flat(sketch, wheelCentre);
  const radius = 1000 * loadedRadius;
  if (view === 'top') return { centre: hub, height: 2.6 * radius };
  return close === 'road'
    ? { centre: point(hub.across, hub.up - radius + 40), height: 230 }
    : { centre: point(hub.across, hub.up - 0.02 * radius), height: 2.75 * radius };
}

/** The tyre: cut across from the front and from above, a ring from the side. */
function tyre(sketch: Sketch, corner: Corner, before = false): Mark {
  const { wheelCentre, spin, loadedRadius } = corner;
  const pen = { key: before ? 'tyre-before' : 'tyre', role: 'wheel', before } as const;
  if (sketch.view === 'side')
    return circle(flat(sketch, wheelCentre), 1000 * loadedRadius, { ...pen, filled: true });
  const long = sketch.view === 'front' ? downInWheelPlane(spin) : heading(corner);
  const at = (k: number, w: number): Point =>
    flat(sketch, along(along(wheelCentre, k * loadedRadius, long), w * HALF_WIDTH, spin));
  return path([at(1, 1), at(1, -1), at(-1, -1), at(-1, 1)], { ...pen, filled: true });
}

/** The middle of the wheel, from the road to the top, and the wheel centre. */
function middle(sketch: Sketch, { wheelCentre, spin, loadedRadius }: Corner): Mark {
  const down = downInWheelPlane(spin);
  const at = (k: number): Point => flat(sketch, along(wheelCentre, k * loadedRadius, down));
  return path([at(1), at(-1)], { key: 'middle', role: 'wheel', line: 'chain', closed: false });
}

function axis(sketch: Sketch, corner: Corner, before = false): Mark {
  const [low, high] = axisEnds(corner);
  return path([flat(sketch, low), flat(sketch, high)], {
    key: before ? 'axis-before' : 'axis',
    role: 'axis',
    line: 'heavy-chain',
    closed: false,
    before,
  });
}

function axisEnds({ axis: line, wheelCentre, loadedRadius }: Corner): readonly [Vector, Vector] {
  return [
    atHeight(line, wheelCentre.z - loadedRadius - BEYOND / 2),
    atHeight(line, wheelCentre.z + loadedRadius + BEYOND),
  ];
}

function placeOf(at: PicturePoint, corner: Corner): Vector {
  const { contactCentre, groundPoint, axisAtCentre } = measure(corner);
  const { wheelCentre, loadedRadius, spin } = corner;
  switch (at) {
    case 'contact':
      return contactCentre;
    case 'ground':
      return groundPoint;
    case 'centre':
      return wheelCentre;
    case 'axisAtCentre':
      return axisAtCentre;
    case 'top':
      return along(wheelCentre, -loadedRadius, downInWheelPlane(spin));
    case 'axis':
      return atHeight(corner.axis, wheelCentre.z + 0.75 * loadedRadius);
  }
}

function pointMarks(at: PicturePoint, says: string, sketch: Sketch, corner: Corner): Mark[] {
  const place = flat(sketch, placeOf(at, corner));
  const role = at === 'contact' || at === 'centre' || at === 'top' ? 'wheel' : 'axis';
  const label: Mark = { kind: 'label', key: `at-${at}-name`, role, at: place, text: says };
  return at === 'axis' ? [label] : [{ kind: 'spot', key: `at-${at}`, role, at: place }, label];
}

function forceMarks(force: PictureForce, i: number, sketch: Sketch, corner: Corner): Mark[] {
  const [ahead, out, up] = force.towards;
  const { contactCentre } = measure(corner);
  const place = force.at === 'road' ? contactCentre : corner.wheelCentre;
  const size = Math.hypot(ahead, out, up) || 1;
  const side = corner.side === 'left' ? 1 : -1;
  const tip = along(place, ARROW / size, vector(ahead, side * out, up));
  const arrow: Arrow = {
    kind: 'arrow',
    key: `force-${i}`,
    role: 'force',
    from: flat(sketch, place),
    to: flat(sketch, tip),
  };
  return [
    arrow,
    { kind: 'label', key: `force-${i}-name`, role: 'force', at: arrow.to, text: force.says },
  ];
}

/** What the picture shows, and where its letters are: no more than who sees it can see. */
function words({ corner, view, before, measures = [], points = [], forces = [] }: CornerPicture) {
  const { inclination, caster } = measure(corner);
  const lean = view === 'side' ? caster : inclination;
  const [plus, minus] = view === 'side' ? ['rearward', 'forward'] : ['inboard', 'outboard'];
  const leans = Math.abs(lean) < 1e-6 ? 'upright' : `its top leaning ${lean > 0 ? plus : minus}`;
  const marks = [
    ...measures.map(({ of, says }) => `${says}: ${MEASURE_WORDS[of]}`),
    ...points
      .filter(({ says }) => says.length < 3)
      .map(({ at, says }) => `${says}: ${POINT_WORDS[at]}`),
    ...forces.map(
      ({ at, says }) => `${says}: a force at the ${at === 'road' ? 'road' : 'wheel centre'}`,
    ),
  ];
  return [
    `The wheel on the road ${VIEW_NAMES[view]}, with its middle, and the steering axis, ${leans}.`,
    ...(before ? ['Pale: as it stood before.'] : []),
    ...(marks.length > 0 ? [`Marked are ${marks.join('; ')}.`] : []),
  ].join(' ');
}
