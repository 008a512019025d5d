import { momentOf, type Action } from '#core/action.ts';
import type { Corner } from '#core/corner.ts';
import { sizeText, valueText, type UnitSystem } from '#core/display.ts';
import { atHeight } from '#core/line.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { along, direction, dot, minus, type Vector } from '#core/vector.ts';
import type { Mark, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { paperUnit } from './measure-place.ts';
import { bar, between, flat, path, type Sketch } from './sketch.ts';

/** A load as the lever's drawing needs it: what it does, and the moment that it makes about the axis. */
interface LeveredLoad {
  readonly key: string;
  readonly action: Action;
  readonly moment: QuantityId;
  /** Loads drawn before this one: its bent arrow keeps clear of theirs. */
  readonly before: number;
}

/** Half of a lever's width, and the radii of the bent arrows, in units of paper. */
const HALF_WIDTH = 4;
const RADIUS = 25;
const NEXT_RADIUS = 8;

/** The farthest that an arrow is bent, in radians, and the moment in N·m that bends it half as far. */
const MOST_TURN = 4.6;
const HALF_TURN = 60;

/** A couple about an upright line below this is what rounding leaves, in N·m. */
const NO_COUPLE = 0.05;

/**
 * From above: the lever, from the axis at the height of the force square to its line of action; the way that
 * it turns the wheel, as an arrow bent round the axis; and the couple that comes with the force, if there is one.
 */
export function leverMarks(
  sketch: Sketch,
  corner: Corner,
  { key, action, moment, before }: LeveredLoad,
  window: Window,
  units: UnitSystem,
): Mark[] {
  const unit = paperUnit(window);
  const axis = atHeight(corner.axis, action.point.z);
  const ahead = direction({ ...action.force, z: 0 });
  const foot = along(action.point, dot(minus(axis, action.point), ahead), ahead);
  const [a, f] = [flat(sketch, axis), flat(sketch, foot)];
  const size = momentOf(corner, action);
  return [
    {
      ...bar(a, f, HALF_WIDTH * unit, {
        key: `lever-${key}`,
        role: 'lever',
        line: 'none',
        filled: true,
      }),
      quantity: moment,
    },
    path([f, flat(sketch, action.point)], {
      key: `line-of-action-${key}`,
      role: 'force',
      line: 'hidden',
      closed: false,
    }),
    { kind: 'spot', key: `axis-for-${key}`, role: 'axis', at: a },
    ...coupleMarks(key, flat(sketch, action.point), action.couple, unit, units),
    {
      kind: 'turn',
      key: `turn-${key}`,
      role: 'lever',
      quantity: moment,
      centre: a,
      radius: RADIUS + before * NEXT_RADIUS,
      ...bent(size, f.across >= a.across ? Math.PI : 0),
    },
    {
      kind: 'label',
      key: `moment-${key}`,
      role: 'lever',
      quantity: moment,
      at: between(a, f, 0.5),
      text: sizeText(size, quantity(moment), units),
    },
  ];
}

/** A couple with an upright part turns what it acts on: round the point where the force is counted. */
function coupleMarks(
  key: string,
  at: Point,
  { z }: Vector,
  unit: number,
  units: UnitSystem,
): Mark[] {
  if (Math.abs(z) < NO_COUPLE) return [];
  const radius = RADIUS - NEXT_RADIUS;
  return [
    {
      kind: 'turn',
      key: `couple-${key}`,
      role: 'force',
      centre: at,
      radius,
      ...bent(z, 0),
    },
    {
      kind: 'label',
      key: `couple-${key}-name`,
      role: 'force',
      at: point(at.across + radius * unit, at.up),
      text: `couple ${valueText(Math.abs(z), 'moment', units)}`,
    },
  ];
}

/** How an arrow is bent by a moment: counterclockwise from above is to the left; it stands about `middle`, in radians from the right. */
export function bent(size: number, middle: number): { from: number; sweep: number } {
  const sweep = (MOST_TURN * size) / (Math.abs(size) + HALF_TURN);
  return { from: middle - sweep / 2, sweep };
}
