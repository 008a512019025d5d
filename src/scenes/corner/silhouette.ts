import type { Vector } from '#core/vector.ts';
import { point, type Point } from '../plane.ts';
import { placed, type PartAxes, type PartPoint } from './part-axes.ts';
import { flat, type Sketch } from './sketch.ts';

/** As many corners as make a wheel look round. */
const DIRECTIONS = Array.from({ length: 48 }, (_, i) => {
  const angle = (2 * Math.PI * i) / 48;
  return point(Math.cos(angle), Math.sin(angle));
});

/** Points closer than this are one corner, in millimetres. */
const SAME = 1e-6;

/**
 * The outline of a body turned about the spin axis, as a view shows it: in every direction on paper the point of
 * its rings that lies farthest that way. Of a ring about c with radius r, of which paper shows the radii p and q,
 * that is c + r (p (p·d) + q (q·d))/√((p·d)² + (q·d)²) in the direction d. The body must be convex.
 *
 * @param profile (out, radius) of its rings
 */
export const silhouette = (
  sketch: Sketch,
  axes: PartAxes,
  profile: readonly PartPoint[],
): Point[] => silhouetteIn((at) => flat(sketch, at), axes, profile);

/** The same on any paper, from how a point in space, or a free vector, comes onto it. */
export function silhouetteIn(
  onto: (at: Vector) => Point,
  axes: PartAxes,
  profile: readonly PartPoint[],
): Point[] {
  const p = onto(axes.ahead);
  const q = onto(axes.up);
  const rings = profile.map(([out, radius]) => ({
    centre: onto(placed(axes, [out, 0])),
    // The radii above are of a metre.
    reach: radius / 1000,
  }));
  const outline: Point[] = [];
  for (const d of DIRECTIONS) {
    const pd = p.across * d.across + p.up * d.up;
    const qd = q.across * d.across + q.up * d.up;
    // Plain roots: `Math.hypot` is many times slower, and this is done anew in every frame.
    const seen = Math.sqrt(pd * pd + qd * qd) || 1;
    let farthest = -Infinity;
    let found = point(0, 0);
    for (const { centre, reach } of rings) {
      const far = centre.across * d.across + centre.up * d.up + reach * seen;
      if (far <= farthest) continue;
      farthest = far;
      found = point(
        centre.across + (reach * (p.across * pd + q.across * qd)) / seen,
        centre.up + (reach * (p.up * pd + q.up * qd)) / seen,
      );
    }
    const last = outline.at(-1);
    if (!last || apart(found, last) > SAME) outline.push(found);
  }
  return outline;
}

const apart = (a: Point, b: Point): number =>
  Math.max(Math.abs(a.across - b.across), Math.abs(a.up - b.up));
