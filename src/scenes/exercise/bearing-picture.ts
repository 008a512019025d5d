import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';
import {
  bearingDimension,
  loadMarks,
  ROW_NAMES,
  rowLoadMarks,
  sideMarks,
  type BearingMark,
  type RowLoad,
  type SidePush,
} from './bearing-marks.ts';
import { bearingWords } from './bearing-words.ts';

/** Two rows of a wheel bearing and the load that goes through them, from the front. Millimetres, outboard positive. */
export interface BearingPicture {
  readonly offset_mm: number;
  readonly before_mm?: number;
  readonly spread_mm: number;
  /** With it the wheel is seen down to the road. */
  readonly radius_mm?: number;
  readonly measures: readonly BearingMark[];
  readonly load?: string;
  readonly side?: SidePush;
  readonly rows?: readonly RowLoad[];
  readonly wrong?: WrongBearing;
}

/** A wrong road beside the right one. */
interface WrongBearing {
  readonly offset_mm?: number;
  readonly measures?: readonly BearingMark[];
  readonly rows?: readonly RowLoad[];
  readonly side?: SidePush;
}

const HALF_HEIGHT = 62;
const ROW = 9;
const RING = 26;
/** Half the width of the tyre, and how much of it is seen above the spin axis, in millimetres. */
const TYRE = 100;
const TYRE_TOP = 80;

/** Spin axis, both rows, and the middle of the wheel, which the load goes up through. */
export function bearingPicture(picture: BearingPicture): Scene {
  const { offset_mm, before_mm, spread_mm, radius_mm, measures, load, side, rows, wrong } = picture;
  const half = spread_mm / 2;
  const foot = -(radius_mm ?? HALF_HEIGHT);
  const line = (key: string, across: number, pen = {}): Mark =>
    path([point(across, foot), point(across, HALF_HEIGHT)], {
      ...{ key, role: 'wheel', line: 'chain', closed: false },
      ...pen,
    });
  const row = (key: 'inboard' | 'outboard', across: number): readonly Mark[] => [
    ...[RING, -RING].map((up): Mark => ({
      ...{ kind: 'circle', key: `${key}-${up}`, role: 'bearing', centre: point(across, up) },
      ...{ radius: ROW, line: 'outline', filled: true },
    })),
    { kind: 'spot', key: `${key}-centre`, role: 'bearing', at: point(across, 0) },
    {
      ...{ kind: 'label', key: `${key}-name`, role: 'bearing', text: ROW_NAMES[key] },
      at: point(across, RING + 16),
    },
  ];
  return {
    title: 'Both rows of a left wheel bearing from the front',
    description: bearingWords(picture),
    window: windowOf(picture),
    marks: [
      ...(radius_mm === undefined ? [] : wheelMarks(offset_mm, radius_mm)),
      path([point(-110, 0), point(110, 0)], {
        ...{ key: 'spin-axis', role: 'part', line: 'chain', closed: false },
      }),
      ...row('inboard', -half),
      ...row('outboard', half),
      ...(before_mm === undefined ? [] : [line('line-before', before_mm, { before: true })]),
      line('line', offset_mm),
      ...(wrong?.offset_mm === undefined
        ? []
        : [line('wrong-line', wrong.offset_mm, { wrong: true })]),
      ...(load === undefined ? [] : loadMarks(load, offset_mm, foot)),
      ...(side ? sideMarks(side, offset_mm, foot, radius_mm !== undefined) : []),
      ...(wrong?.side ? sideMarks(wrong.side, offset_mm, foot, radius_mm !== undefined, true) : []),
      ...(rows ?? []).flatMap((one) => rowLoadMarks(one, half)),
      ...(wrong?.rows ?? []).flatMap((one) => rowLoadMarks(one, half, true)),
      ...measures.map((one) => bearingDimension(one, picture, offset_mm)),
      ...(wrong?.measures ?? []).map((one) =>
        bearingDimension(one, picture, wrong?.offset_mm ?? offset_mm, true),
      ),
    ],
  };
}

/** The foot of the tyre on the road. */
const wheelMarks = (offset_mm: number, radius_mm: number): readonly Mark[] => [
  { kind: 'ground', key: 'ground', role: 'ground', up: -radius_mm },
  path(
    [
      point(offset_mm - TYRE, TYRE_TOP),
      point(offset_mm - TYRE, -radius_mm),
      point(offset_mm + TYRE, -radius_mm),
      point(offset_mm + TYRE, TYRE_TOP),
    ],
    { key: 'tyre', role: 'wheel', closed: false },
  ),
];

function windowOf({ radius_mm, rows, wrong }: BearingPicture): Scene['window'] {
  if (radius_mm !== undefined)
    return { centre: point(0, -radius_mm / 2 + 25), height: radius_mm + 190 };
  return rows || wrong?.rows
    ? { centre: point(0, 2), height: 226 }
    : { centre: point(0, -8), height: wrong ? 210 : 190 };
}
