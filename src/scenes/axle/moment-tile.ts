import { momentOf } from '#core/action.ts';
import { outboardSign } from '#core/corner.ts';
import { sizeText } from '#core/display.ts';
import { measure } from '#core/geometry.ts';
import { quantity } from '#core/quantities.ts';
import { bent } from '../corner/lever-marks.ts';
import { flat, path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { textWidth } from '../paper/label-placement.ts';
import { point, type Point } from '../plane.ts';
import { AXLE_CASES, rearwardForce, type AxleCase } from './axle-cases.ts';
import { forcePoint, sideMoment, type SidePlace } from './axle-forces.ts';
import { AXLE_PAPER } from './axle-paper.ts';
import { momentOn } from './axle-values.ts';

/** By how much the levers are drawn longer than the car is. */
export const LEVER_SCALE = 4;

/** How far the moment’s words and its area keep from the tyre, and the radius of the bent arrow, in units of paper. */
const WORDS_FROM_TYRE = 13;
const FROM_TYRE = 25;
const RADIUS = 24;

/** How far words keep from the paper’s edge. */
const MARGIN = 4;

/**
 * The moment of the force along the car as an area, lever times force, ahead of or behind the tyre, away from the
 * force’s own arrow: from the line of the force, in the wheel, to the axis. And the way that all loads on this
 * wheel turn it, as an arrow bent round the axis.
 */
export function momentMarks(place: SidePlace): Mark[] {
  const { side, axle, look } = place;
  if (!look.measures.includes(sideMoment(side))) return [];
  const corner = axle.corners[side];
  const size = momentOn(side, axle);
  if (axle.loads[side].length === 0) return [];
  const tile = tileOf(place);
  const axis = flat({ view: 'top', side }, measure(corner).groundPoint);
  const common = { role: 'lever', quantity: sideMoment(side) } as const;
  const text = sizeText(size, quantity(sideMoment(side)), look.units);
  return [
    ...(tile ? tileMarks(tile, common) : []),
    {
      kind: 'turn',
      key: 'turn',
      ...common,
      centre: axis,
      radius: RADIUS,
      ...bent(
        bendOf(size, tile ? look.which : 'rolling'),
        forcePoint(place).across >= axis.across ? Math.PI : 0,
      ),
    },
    {
      kind: 'label',
      key: 'moment',
      ...common,
      at: wordsPlace(place, text),
      here: true,
      text,
    },
  ];
}

/** The area before a change: its outline, pale. */
export function tileBefore(place: SidePlace): Mark[] {
  const tile = place.look.measures.includes(sideMoment(place.side)) ? tileOf(place) : undefined;
  if (!tile) return [];
  return [path(corners(tile), { key: 'tile-before', role: 'lever', line: 'thin', before: true })];
}

interface Tile {
  /** On the line of the force, at the end that is nearer to the tyre. */
  readonly at: Point;
  /** From there to the axis, and away from the tyre; millimetres on the drawing, with their signs. */
  readonly toAxis: number;
  readonly away: number;
}

/** Lever times force of the case that is shown; nothing where there is no such force. */
function tileOf(place: SidePlace): Tile | undefined {
  const { side, axle, look, unit, setting, anatomy } = place;
  const load = axle.loads[side].find(({ which }) => which === look.which);
  if (!load) return undefined;
  const corner = axle.corners[side];
  const force = rearwardForce(look.which, side, setting);
  const lever = (outboardSign(side) * momentOf(corner, load.action)) / force;
  const way = wayAside(place);
  const at = forcePoint(place);
  return {
    at: point(at.across, at.up + way * (anatomy.tyreRadius + FROM_TYRE * unit)),
    toAxis: -outboardSign(side) * LEVER_SCALE * 1000 * lever,
    away: way * Math.abs(force) * AXLE_CASES[look.which].scale * unit,
  };
}

function tileMarks(tile: Tile, common: Pick<Mark, 'role' | 'quantity'>): Mark[] {
  const [nearForce, farForce, farAxis, nearAxis] = corners(tile);
  return [
    {
      ...path(corners(tile), { key: 'tile', role: 'lever', line: 'none', filled: true }),
      ...common,
    },
    path([nearForce, farForce], {
      key: 'tile-force',
      role: 'force',
      closed: false,
      line: 'hidden',
    }),
    path([nearAxis, farAxis], { key: 'tile-axis', role: 'axis', closed: false, line: 'outline' }),
  ];
}

const corners = ({ at: { across, up }, toAxis, away }: Tile): [Point, Point, Point, Point] => [
  point(across, up),
  point(across, up + away),
  point(across + toAxis, up + away),
  point(across + toAxis, up),
];

/** Away from the force’s arrow: ahead of the tyre (down on paper, −1) where the force points rearward. */
const wayAside = ({ side, look, setting }: SidePlace): 1 | -1 =>
  rearwardForce(look.which, side, setting) < 0 ? 1 : -1;

/** The small moments of rolling tyres and sloping roads are bent as far as the large ones of brakes and edges. */
const bendOf = (size: number, which: AxleCase): number =>
  (size * AXLE_CASES[which].scale) / AXLE_CASES.brake.scale;

/** Between the tyre and its area, as far out as the paper leaves room. */
function wordsPlace(place: SidePlace, text: string): Point {
  const { side, anatomy, unit } = place;
  const { across, up } = forcePoint(place);
  const most = (AXLE_PAPER.width - textWidth(text)) / 2 - MARGIN;
  return point(
    outboardSign(side) * Math.min(Math.abs(across), most * unit),
    up + wayAside(place) * (anatomy.tyreRadius + WORDS_FROM_TYRE * unit),
  );
}
