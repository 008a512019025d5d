import { downInWheelPlane, heading, type Corner } from '#core/corner.ts';
import { dot, minus, times, vector, type Vector } from '#core/vector.ts';

/**
 * Axes that turn with the carrier, for drawing parts: `out` along the spin axis, `ahead` along the wheel's
 * heading, `up` in the wheel plane; metres from `origin`.
 */
export interface PartAxes {
  readonly origin: Vector;
  readonly out: Vector;
  readonly ahead: Vector;
  readonly up: Vector;
}

/** A place on a part: (out, up, ahead) in millimetres, as on a workshop drawing. `ahead` may be left out. */
export type PartPoint = readonly [out: number, up: number, ahead?: number];

/** Axes of the wheel, at its centre. */
export const wheelAxes = (corner: Corner): PartAxes => ({
  origin: corner.wheelCentre,
  out: corner.spin,
  ahead: heading(corner),
  up: times(-1, downInWheelPlane(corner.spin)),
});

/**
 * Axes of the carrier. Its origin is where the wheel centre would be with the car's own wheel and no spacer:
 * the hub stays there while the wheel moves out along the spin axis.
 *
 * @param wheelShift how far the wheel centre has moved out along the spin axis, in metres
 */
export function carrierAxes(corner: Corner, wheelShift: number): PartAxes {
  const axes = wheelAxes(corner);
  return { ...axes, origin: minus(axes.origin, times(wheelShift, axes.out)) };
}

/** Where a place on a part is in space. */
export const placed = ({ origin, out, ahead, up }: PartAxes, [w, h, f = 0]: PartPoint): Vector =>
  vector(
    origin.x + (w * out.x + h * up.x + f * ahead.x) / 1000,
    origin.y + (w * out.y + h * up.y + f * ahead.y) / 1000,
    origin.z + (w * out.z + h * up.z + f * ahead.z) / 1000,
  );

/** A point in space as a place on the part: the inverse of `placed`. */
export function onPart({ origin, out, ahead, up }: PartAxes, at: Vector): PartPoint {
  const from = minus(at, origin);
  return [1000 * dot(from, out), 1000 * dot(from, up), 1000 * dot(from, ahead)];
}
