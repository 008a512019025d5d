import { radians } from '#core/angle.ts';
import type { Side } from '#core/corner.ts';
import { cross, dot, vector, type Vector } from '#core/vector.ts';
import { point, type Point } from '../plane.ts';

/** Where the reader looks from, in degrees: this is what is dragged and typed. */
export interface Viewpoint {
  /** Round the car: 0 from ahead of it, positive toward the car's left, from −180 to 180. */
  readonly round: number;
  /** Above the road, from 5 to 90. */
  readonly above: number;
}

/** The directions of a viewpoint in vehicle axes, each of length 1 and square to the others. */
export interface Sight {
  /** From the drawing toward the reader. */
  readonly toward: Vector;
  /** To the right on paper, and upward. */
  readonly right: Vector;
  readonly up: Vector;
}

/** How high the reader may look from: never from under the road, or even along it. */
export const ABOVE = { least: 5, most: 90 } as const;

/** Where the figure begins: ahead of the wheel and from the middle of the car, so that the axis is seen. */
export const firstViewpoint = (side: Side): Viewpoint => ({
  round: side === 'left' ? -38 : 38,
  above: 20,
});

/** The viewpoint, turned back into −180 to 180 round the car and kept above the road. */
export function allowedViewpoint({ round, above }: Viewpoint): Viewpoint {
  const turned = ((((round + 180) % 360) + 360) % 360) - 180;
  return {
    round: turned === -180 ? 180 : turned,
    above: Math.min(ABOVE.most, Math.max(ABOVE.least, above)),
  };
}

/** Right, up and toward the reader: (−sin a, cos a, 0), toward × right, and (cos e cos a, cos e sin a, sin e). */
export function sightOf({ round, above }: Viewpoint): Sight {
  const [a, e] = [radians(round), radians(above)];
  const toward = vector(Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e));
  const right = vector(-Math.sin(a), Math.cos(a), 0);
  return { toward, right, up: cross(toward, right) };
}

/** Where a point in vehicle axes (metres) comes onto the paper (millimetres), by parallel projection. */
export const seenFrom = ({ right, up }: Sight, at: Vector): Point =>
  point(1000 * dot(at, right), 1000 * dot(at, up));
