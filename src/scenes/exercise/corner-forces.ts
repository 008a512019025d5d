import { heading, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { along, vector } from '#core/vector.ts';
import { circle, flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';

export interface PictureForce {
  readonly at: 'road' | 'centre';
  /** Ahead, outboard and up, of any length: only the direction is drawn. */
  readonly towards: readonly [number, number, number];
  readonly says: string;
  /** How far behind its place it counts, in metres. */
  readonly behind?: number;
}

/** A moment about the axis, seen from above. */
export interface PictureTurn {
  readonly left: boolean;
  readonly says: string;
}

/** Length of an arrow in metres, and below which share of it the arrow points at the reader or away. */
const ARROW = 0.16;
const END_ON = 0.2;
/** The ring that stands for an arrow seen from its end, in millimetres of the car. */
const RING = 17;

export function forceMarks(
  { at, towards, says, behind = 0 }: PictureForce,
  key: string,
  sketch: Sketch,
  corner: Corner,
  wrong = false,
): readonly Mark[] {
  const [ahead, out, up] = towards;
  const { contactCentre } = measure(corner);
  const place = along(at === 'road' ? contactCentre : corner.wheelCentre, -behind, heading(corner));
  const size = Math.hypot(ahead, out, up) || 1;
  const side = corner.side === 'left' ? 1 : -1;
  const from = flat(sketch, place);
  const to = flat(sketch, along(place, ARROW / size, vector(ahead, side * out, up)));
  const pen = { role: 'force', ...(wrong && { wrong }) } as const;
  const label = (beside: Point): readonly Mark[] =>
    says === '' ? [] : [{ ...pen, kind: 'label', key: `${key}-name`, at: beside, text: says }];
  const run = Math.hypot(to.across - from.across, to.up - from.up);
  if (run > 1000 * ARROW * END_ON) return [{ ...pen, kind: 'arrow', key, from, to }, ...label(to)];
  // From the front, what points ahead points at the reader; from the side, what points outboard.
  const toward = sketch.view === 'side' ? out > 0 : ahead > 0;
  return [...endOn(key, from, toward, wrong), ...label(from)];
}

/** An arrow seen from its end: its point toward the reader, or its feathers. */
function endOn(key: string, { across, up }: Point, towardReader: boolean, wrong: boolean): Mark[] {
  const pen = { role: 'force', line: 'heavy', ...(wrong && { wrong }) } as const;
  const reach = RING * Math.SQRT1_2;
  const stroke = (name: string, sign: 1 | -1): Mark =>
    path([point(across - reach, up - sign * reach), point(across + reach, up + sign * reach)], {
      ...{ ...pen, key: `${key}-${name}`, closed: false },
    });
  return [
    circle(point(across, up), RING, { ...pen, key: `${key}-ring`, filled: true }),
    ...(towardReader
      ? [circle(point(across, up), RING / 4, { ...pen, key: `${key}-point`, filled: true })]
      : [stroke('rising', 1), stroke('falling', -1)]),
  ];
}

/** The turning of the wheel about its axis, from above: left is counterclockwise. */
export function turnMarks(
  { left, says }: PictureTurn,
  key: string,
  centre: Point,
  mmPerUnit: number,
  wrong = false,
): readonly Mark[] {
  const radius = wrong ? 66 : 46;
  const pen = { role: 'lever', ...(wrong && { wrong }) } as const;
  const sweep = left ? 2.2 : -2.2;
  const from = Math.PI / 2 - sweep / 2;
  const reach = radius * mmPerUnit;
  const tip = point(
    centre.across + reach * Math.cos(from + sweep),
    centre.up + reach * Math.sin(from + sweep),
  );
  return [
    { ...pen, kind: 'turn', key, centre, radius, from, sweep },
    { ...pen, kind: 'label', key: `${key}-name`, at: tip, text: says },
  ];
}

/** Where a force acts and which way it points, for whoever does not see it. */
export function forceWords({ at, towards, says }: PictureForce): string {
  const [ahead, out, up] = towards;
  const ways = [
    [ahead, 'forward', 'rearward'],
    [out, 'outboard', 'inboard'],
    [up, 'upward', 'downward'],
  ] as const;
  const way = ways
    .filter(([size]) => size !== 0)
    .map(([size, plus, minus]) => (size > 0 ? plus : minus));
  return `${says === '' ? '' : `${says}: `}a force at the ${at === 'road' ? 'road' : 'wheel centre'}, ${way.join(' and ')}`;
}

export const turnWords = ({ left, says }: PictureTurn): string =>
  `${says}: turns the wheel to the ${left ? 'left' : 'right'}`;
