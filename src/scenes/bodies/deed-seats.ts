import { textWidth } from '../paper/label-placement.ts';
import { point, type Point } from '../plane.ts';
import type { Deed } from './deeds.ts';

/** What decides where the words of an arrow have room. */
export interface SeatPlace {
  /** One unit of paper in millimetres of the car. */
  readonly unit: number;
  /** The wheel centre as it is drawn for this body, and the height of the road. */
  readonly centre: Point;
  readonly road: number;
  /** The side of the caliper on paper: +1 to the right. */
  readonly caliper: 1 | -1;
}

/** Above the wheel centre, and across from it away from the body's force in the bearing: units of paper. */
const TORQUE_SEATS: Readonly<Record<string, readonly [across: number, up: number]>> = {
  pads: [6, -61],
  dragged: [62, 58],
  left: [72, 58],
  shaft: [22, 43],
  load: [12, 82],
};

/** Words along an arrow lie so far beside it, and below the road so far below it. */
const BESIDE = 17;

/**
 * Where the words of a straight arrow stand, in the drawing's plane: along the arrow, on the side where neither
 * caliper nor another arrow is; below the road for what the road does.
 */
export function forceSeat(
  deed: Deed,
  text: string,
  from: Point,
  to: Point,
  place: SeatPlace,
): Point {
  const { unit, centre, road, caliper } = place;
  const way = to.across >= from.across ? 1 : -1;
  const below = road - BESIDE * unit;
  if (deed.key === 'tyre') {
    const forth = deed.by === 'edge' ? 0 : 35 * way;
    return point(from.across + forth * unit, below);
  }
  const half = textWidth(text) / 2;
  const across = centre.across + way * (half + (deed.body === 'carrier' ? 16 : 6)) * unit;
  if (from.up < centre.up - unit) return point(across, from.up - BESIDE * unit);
  const rises = to.up - from.up;
  const over = way !== caliper || rises < -unit;
  return point(
    across,
    over ? Math.max(centre.up + BESIDE * unit, to.up + 13 * unit) : centre.up - BESIDE * unit,
  );
}

/** Where the words of a bent arrow stand. */
export function torqueSeat({ key }: Deed, room: 1 | -1, { centre, unit }: SeatPlace): Point {
  const [across, up] = TORQUE_SEATS[key] ?? [0, 0];
  return point(centre.across + room * across * unit, centre.up + up * unit);
}
