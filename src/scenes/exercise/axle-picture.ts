import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { netMarks, rackMarks, turnOn, yoursAbove } from './axle-marks.ts';
import { axleWords } from './axle-words.ts';

export interface AxleForce {
  readonly says: string;
  /** Positive forward. */
  readonly ahead: number;
  /** Counted by somebody where it should not be. */
  readonly wrong?: boolean;
}

/** +1 to the left, −1 to the right. */
export type Sense = 1 | -1;

export interface AxleTurns {
  readonly left?: Sense;
  readonly right?: Sense;
  /** Of both wheels together. */
  readonly both?: Sense;
  /** Of the whole car. */
  readonly car?: Sense;
  /** Of the rack. */
  readonly rack?: Sense;
  /** Of the left rod: pulled or pushed. */
  readonly rod?: 'tension' | 'compression';
}

export interface AxleMeasure {
  readonly of: 'scrub' | 'halfTrack' | 'track';
  readonly says: string;
  readonly wrong?: boolean;
}

/** Front wheels from above, with forces, rack and rods as far as they are spoken of. */
export interface AxlePicture {
  /** How far each axis meets the road inboard of its wheel's middle; negative outboard. */
  readonly scrub_mm: number;
  readonly left?: AxleForce;
  readonly right?: AxleForce;
  /** The left wheel alone. */
  readonly one?: boolean;
  readonly rack?: 'ahead' | 'behind';
  /** How far the left rod stands out of line with the rack, in radians. */
  readonly rodAngle?: number;
  readonly turns?: AxleTurns;
  readonly measures?: readonly AxleMeasure[];
  readonly wrong?: AxleTurns;
}

const HALF_TRACK = 205;
const HALF_LENGTH = 120;
const HALF_WIDTH = 42;
/** The longest arrow, in millimetres of the drawing, and how much the scrub radius is stretched to be seen. */
const LONGEST = 150;
const STRETCH = 2;
/** How far an axis is drawn from its wheel's middle at most. */
const FARTHEST = { inboard: 92, outboard: 40 };

/** The car's front is at the top, as the driver looks ahead: left is at the left. */
export function axlePicture(picture: AxlePicture): Scene {
  const { scrub_mm, left, right, one, turns = {}, wrong, measures = [] } = picture;
  const most = Math.max(Math.abs(left?.ahead ?? 0), Math.abs(right?.ahead ?? 0));
  const stretched = Math.max(-FARTHEST.outboard, Math.min(FARTHEST.inboard, STRETCH * scrub_mm));
  const isTurning = turns.left ?? turns.right ?? wrong?.left ?? wrong?.right;
  const height = one ? 380 : isTurning === undefined ? 430 : 500;
  const axisOf = (out: 1 | -1): Point => point(out * (HALF_TRACK - stretched), 0);
  const wheel = (key: 'left' | 'right', out: 1 | -1, force?: AxleForce): readonly Mark[] => {
    const across = out * HALF_TRACK;
    const axis = axisOf(out);
    return [
      path(
        [
          point(across - HALF_WIDTH, HALF_LENGTH),
          point(across + HALF_WIDTH, HALF_LENGTH),
          point(across + HALF_WIDTH, -HALF_LENGTH),
          point(across - HALF_WIDTH, -HALF_LENGTH),
        ],
        { key, role: 'wheel', filled: true },
      ),
      { kind: 'spot', key: `${key}-axis`, role: 'axis', at: axis, ringed: true },
      { kind: 'label', key: `${key}-axis-name`, role: 'axis', at: axis, text: 'axis' },
      ...(force ? forceMarks(key, across, force, most) : []),
      ...turnOn(key, axis, turns[key], false),
      ...turnOn(key, axis, wrong?.[key], true),
      ...(wrong?.[key] === undefined ? [] : [yoursAbove(key, axis, height)]),
    ];
  };
  return {
    title: one ? 'The left front wheel from above' : 'Both front wheels from above',
    description: axleWords(picture),
    window: { centre: point(one ? -HALF_TRACK / 2 : 0, -20), height },
    marks: [
      {
        ...{ kind: 'label', key: 'front', role: 'guide', text: 'front of the car' },
        at: point(one ? -HALF_TRACK : 0, one ? 150 : 165),
      },
      path([point(-HALF_TRACK, 0), point(one ? 0 : HALF_TRACK, 0)], {
        ...{ key: 'axle', role: 'part', line: 'thin', closed: false },
      }),
      ...wheel('left', -1, left),
      ...(one ? [] : wheel('right', 1, right)),
      ...rackMarks(picture, axisOf),
      ...netMarks(turns, false),
      ...(wrong ? netMarks(wrong, true) : []),
      ...measures.map((measure, i) => dimension(measure, i, axisOf(-1))),
    ],
  };
}

function forceMarks(
  key: string,
  across: number,
  { says, ahead, wrong }: AxleForce,
  most: number,
): readonly Mark[] {
  const tip = point(across, (LONGEST * ahead) / most);
  const pen = { role: 'force', ...(wrong && { wrong }) } as const;
  return [
    { ...pen, kind: 'arrow', key: `${key}-force`, from: point(across, 0), to: tip },
    { ...pen, kind: 'label', key: `${key}-says`, at: tip, text: says },
  ];
}

/** What is measured stands in front of the wheels, a wrong one in front of the right one. */
function dimension({ of, says, wrong }: AxleMeasure, i: number, axis: Point): Mark {
  const [from, to] = {
    scrub: [point(-HALF_TRACK, 0), axis],
    halfTrack: [point(-HALF_TRACK, 0), point(0, 0)],
    track: [point(-HALF_TRACK, 0), point(HALF_TRACK, 0)],
  }[of] as [Point, Point];
  const up = HALF_LENGTH + 15 - 42 * i;
  return {
    ...{ kind: 'dimension', key: `measure-${i}`, role: 'guide', text: says, from, to },
    ...{ fromFoot: point(from.across, up), toFoot: point(to.across, up) },
    ...(wrong && { wrong }),
  };
}
