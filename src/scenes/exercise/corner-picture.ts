import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { distance } from '#core/vector.ts';
import { flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point, VIEW_NAMES, type Point, type View } from '../plane.ts';
import { PAPER } from '../paper/frame.ts';
import { forceMarks, turnMarks, type PictureForce, type PictureTurn } from './corner-forces.ts';
import { leverMark, measureMark, type PictureMeasure, type WrongLever } from './corner-measures.ts';
import { axis, tyre, upright, wheelMiddle } from './corner-outlines.ts';
import { pivotMarks, pointMarks, type PicturePoint } from './corner-points.ts';
import { cornerWords } from './corner-words.ts';

interface Marked<At> {
  readonly of: At;
  readonly says: string;
}

/** A bare corner as an exercise names it: no car around it, nothing in it that is not spoken of. */
export interface CornerPicture {
  readonly view: View;
  readonly close?: 'road' | 'whole';
  readonly corner: Corner;
  /** How much of the axis is drawn, where the rest of it would tell what is asked for. */
  readonly axis?: 'whole' | 'low' | 'high' | 'pivots' | 'none';
  /** Whether the pivots are seen, and angles begin at the lower one. */
  readonly pivots?: boolean;
  /** Axis and road alone. */
  readonly wheelless?: boolean;
  readonly before?: Corner;
  readonly measures?: readonly Marked<PictureMeasure>[];
  readonly points?: readonly { readonly at: PicturePoint; readonly says: string }[];
  readonly forces?: readonly PictureForce[];
  readonly turn?: PictureTurn;
  readonly wrong?: WrongCorner;
}

/** A wrong road beside the right one: the corner as it would stand, or what was taken on this one. */
export interface WrongCorner {
  readonly corner?: Corner;
  readonly measures?: readonly Marked<PictureMeasure>[];
  readonly points?: readonly { readonly at: PicturePoint; readonly says: string }[];
  readonly forces?: readonly PictureForce[];
  readonly turn?: PictureTurn;
  readonly lever?: WrongLever;
}

/** What stands nearer than this stands in the same place, in metres. */
const NEAR = 1e-6;
/** What is seen below the road and above all else where there are pivots, in millimetres of the car. */
const ROOM_BELOW = 110;
const ROOM_ABOVE = 140;
/** Wheel, road and steering axis, with what an exercise marks on them. */
export function cornerPicture(picture: CornerPicture): Scene {
  const { view, corner, before, measures = [], points = [], forces = [], turn, wrong } = picture;
  const sketch: Sketch = { view, side: corner.side };
  const { contactCentre } = measure(corner);
  const window = windowOf(picture, sketch);
  const mmPerUnit = window.height / PAPER.height;
  const middle = window.centre.across - Math.sign(sketchOut(sketch)) * 0.64 * window.height;
  const { pivots = false } = picture;
  const dimension = ({ of, says }: Marked<PictureMeasure>, on: Corner, isWrong = false): Mark =>
    measureMark(of, says, sketch, on, {
      key: isWrong ? `wrong-${of}` : of,
      ...{
        wrong: isWrong,
        axis: pivots ? 'pivots' : picture.axis,
        middle,
        before,
        behind: forces[0]?.behind,
      },
    });
  const right = measures.map((one) => dimension(one, corner));
  const taken = (wrong?.measures ?? []).map((one) => dimension(one, wrong?.corner ?? corner, true));
  const ground: readonly Mark[] =
    view === 'top'
      ? []
      : [{ kind: 'ground', key: 'ground', role: 'ground', up: 1000 * contactCentre.z }];
  const wheel = (on: Corner): readonly Mark[] =>
    picture.wheelless
      ? points.some(({ at }) => at === 'centre')
        ? [upright(sketch, on)]
        : []
      : [tyre(sketch, on), wheelMiddle(sketch, on)];
  return {
    title: `${corner.side === 'left' ? 'Left' : 'Right'} front wheel ${VIEW_NAMES[view]}`,
    description: cornerWords(picture, right, taken),
    window,
    marks: [
      ...ground,
      ...(before && !picture.wheelless ? [tyre(sketch, before, 'before')] : []),
      ...(before && picture.axis !== 'none' ? [axis(sketch, before, picture, 'before')] : []),
      ...wheel(corner),
      ...(picture.axis === 'none' ? [] : [axis(sketch, corner, picture)]),
      ...(pivots ? pivotMarks(sketch, corner) : []),
      ...(wrong?.corner ? wrongMarks(sketch, corner, wrong.corner, picture) : []),
      ...right,
      ...taken,
      ...(wrong?.lever ? [leverMark(wrong.lever, sketch, corner)] : []),
      ...middleOfCar(measures, middle, window),
      ...points.flatMap(({ at, says }) => pointMarks(at, says, sketch, corner)),
      ...(wrong?.points ?? []).flatMap(({ at, says }) =>
        pointMarks(at, says, sketch, corner, true),
      ),
      ...forces.flatMap((force, i) => forceMarks(force, `force-${i}`, sketch, corner)),
      ...(wrong?.forces ?? []).flatMap((force, i) =>
        forceMarks(force, `wrong-force-${i}`, sketch, corner, true),
      ),
      ...(turn ? turnMarks(turn, 'turn', pivotOf(sketch, corner, forces), mmPerUnit) : []),
      ...(wrong?.turn
        ? turnMarks(wrong.turn, 'wrong-turn', pivotOf(sketch, corner, forces), mmPerUnit, true)
        : []),
    ],
  };
}

/** What of a wrong corner stands elsewhere: the wheel, the axis, or both. */
function wrongMarks(
  sketch: Sketch,
  right: Corner,
  wrong: Corner,
  picture: CornerPicture,
): readonly Mark[] {
  const isWheelElsewhere =
    distance(right.wheelCentre, wrong.wheelCentre) > NEAR ||
    distance(right.spin, wrong.spin) > NEAR ||
    Math.abs(right.loadedRadius - wrong.loadedRadius) > NEAR;
  const isAxisElsewhere =
    distance(right.axis.direction, wrong.axis.direction) > NEAR ||
    distance(measure(right).axisAtCentre, atHeight(wrong.axis, right.wheelCentre.z)) > NEAR;
  return [
    ...(isWheelElsewhere && !picture.wheelless ? [tyre(sketch, wrong, 'wrong')] : []),
    ...(isAxisElsewhere ? [axis(sketch, wrong, { ...picture, axis: 'whole' }, 'wrong')] : []),
  ];
}

const sketchOut = ({ view, side }: Sketch): number =>
  view === 'front' && side === 'right' ? -1 : 1;

function windowOf(
  { view, close = 'whole', corner, before, wrong, pivots }: CornerPicture,
  sketch: Sketch,
) {
  // The paper keeps still while things move on it.
  const { wheelCentre, loadedRadius } = before ?? corner;
  const hub = flat(sketch, wheelCentre);
  const radius = 1000 * loadedRadius;
  if (view === 'top') return { centre: hub, height: 2.6 * radius };
  if (pivots && corner.pivots) {
    const { lower, upper } = corner.pivots;
    const low = hub.up - radius - ROOM_BELOW;
    const high = Math.max(hub.up + radius, 1000 * upper.z) + ROOM_ABOVE;
    const across = (flat(sketch, lower).across + flat(sketch, upper).across) / 2;
    return { centre: point((across + hub.across) / 2, (low + high) / 2), height: high - low };
  }
  if (close === 'road')
    return {
      centre: point(hub.across, hub.up - radius + (wrong ? 30 : 40)),
      height: wrong ? 260 : 230,
    };
  return { centre: point(hub.across, hub.up - 0.02 * radius), height: 2.75 * radius };
}

/** The middle of the car, drawn nearer than it is, where something is measured from it. */
function middleOfCar(
  measures: readonly Marked<PictureMeasure>[],
  middle: number,
  { centre, height }: Scene['window'],
): readonly Mark[] {
  if (!measures.some(({ of }) => of.endsWith('Out'))) return [];
  const [low, high] = [
    point(middle, centre.up - height / 2.3),
    point(middle, centre.up + height / 2.3),
  ];
  return [
    path([low, high], { key: 'middle-of-car', role: 'guide', line: 'chain', closed: false }),
    {
      kind: 'label',
      key: 'middle-of-car-name',
      role: 'guide',
      at: point(middle, centre.up - height / 4),
      text: 'middle of the car',
    },
  ];
}

/** Where the wheel turns, seen from above: the axis at the height of the force. */
function pivotOf(sketch: Sketch, corner: Corner, forces: readonly PictureForce[]): Point {
  const { groundPoint, axisAtCentre } = measure(corner);
  return flat(sketch, forces.some(({ at }) => at === 'centre') ? axisAtCentre : groundPoint);
}
