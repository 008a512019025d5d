import { spinAxis, type Corner } from '#core/corner.ts';
import { lineThrough, type Line } from '#core/line.ts';
import { direction, vector, type Vector } from '#core/vector.ts';
import { workshopAxis } from '#core/workshop-axis.ts';

/** What a paper exercise says of a wheel and its axis: radians and metres; what is not said is nought. */
interface Said {
  readonly inclination?: number;
  readonly caster?: number;
  readonly loadedRadius?: number;
}

/** Half a track: where the wheel stands, since an exercise needs some place for it. */
const OUT = 0.75;

/** The spin axis of an upright left wheel without toe. */
const UPRIGHT = spinAxis('left', 0, 0);

/** A left corner with an upright wheel, its axis given where it meets the road. */
export function cornerAtRoad({
  scrubRadius = 0,
  trail = 0,
  inclination = 0,
  caster = 0,
  loadedRadius = 0.3,
}: Said & { readonly scrubRadius?: number; readonly trail?: number }): Corner {
  const wheelCentre = vector(0, OUT, loadedRadius);
  const axis = workshopAxis(
    { side: 'left', wheelCentre, spin: UPRIGHT, loadedRadius },
    { inclination, caster, scrubRadius, trail },
  );
  return { side: 'left', wheelCentre, spin: UPRIGHT, loadedRadius, axis };
}

/** A left corner with an upright wheel, its axis given where it passes the wheel centre. */
export function cornerAtCentre({
  spindleOffset = 0,
  casterOffset = 0,
  inclination = 0,
  caster = 0,
  loadedRadius = 0.3,
}: Said & { readonly spindleOffset?: number; readonly casterOffset?: number }): Corner {
  const wheelCentre = vector(0, OUT, loadedRadius);
  const { x, y, z } = wheelCentre;
  const point = vector(x + casterOffset, y - spindleOffset, z);
  const upward = direction(vector(-Math.tan(caster), -Math.tan(inclination), 1));
  const axis = { point, direction: upward };
  return { side: 'left', wheelCentre, spin: UPRIGHT, loadedRadius, axis };
}

/** A left corner with a camber and an inclination, its axis through two pivots. */
export function cornerWithPivots(inclination: number, camber: number): Corner {
  const lower = vector(0, OUT - 0.08, 0.2);
  const upper = vector(0, lower.y - 0.5 * Math.tan(inclination), 0.7);
  return {
    side: 'left',
    wheelCentre: vector(0, OUT, 0.3),
    spin: spinAxis('left', camber, 0),
    loadedRadius: 0.3,
    axis: lineThrough(lower, upper),
    pivots: { lower, upper },
  };
}

/** A left corner with an upright wheel and its pivots where a tape measure found them, up from the road. */
export function cornerOnPivots(
  lower: Point,
  upper: Point,
  wheel: { readonly out?: number; readonly loadedRadius?: number } = {},
): Corner {
  const { out = OUT, loadedRadius = 0.3 } = wheel;
  return {
    side: 'left',
    wheelCentre: vector(0, out, loadedRadius),
    spin: UPRIGHT,
    loadedRadius,
    axis: axisThrough(lower, upper),
    pivots: { lower: placed(lower), upper: placed(upper) },
  };
}

/** The axis between two pivots of a left corner, in metres. */
export const axisThrough = (lower: Point, upper: Point): Line =>
  lineThrough(placed(lower), placed(upper));

/** A pivot as a tape measure has it: ahead of a reference, out from the centre line, up from the road. */
interface Point {
  readonly ahead?: number;
  readonly out?: number;
  readonly up?: number;
}

const placed = ({ ahead = 0, out = 0, up = 0 }: Point): Vector => vector(ahead, out, up);

/**
 * A left corner whose forces along the car have these levers about the axis, square to it: at the road, positive with
 * the axis inboard, and at the wheel centre. In metres.
 */
export function cornerWithLevers(atRoad: number, atCentre: number, loadedRadius = 0.31): Corner {
  const inclination = Math.asin((atCentre - atRoad) / loadedRadius);
  return cornerAtRoad({ scrubRadius: atRoad / Math.cos(inclination), inclination, loadedRadius });
}
