import { along, cross, direction, length, minus, triple, type Vector } from './vector.ts';

/** A line in space: a point on it, and its direction (length 1). */
export interface Line {
  readonly point: Vector;
  readonly direction: Vector;
}

/**
 * The line through two points, directed from the first to the second.
 *
 * @throws RangeError when the points coincide
 */
export const lineThrough = (from: Vector, to: Vector): Line => ({
  point: from,
  direction: direction(minus(to, from)),
});

/** The point of the line at height `z`, in metres. The line must not be level. */
export const atHeight = ({ point, direction }: Line, z: number): Vector =>
  along(point, (z - point.z) / direction.z, direction);

/** Shortest distance from a point to the line, in metres: |(B − L) × u|. */
export const distanceToLine = (line: Line, point: Vector): number =>
  length(cross(minus(point, line.point), line.direction));

/**
 * Moment about the line of a force acting at a point: u·((B − L) × F), in N·m, right-handed about
 * the line's direction.
 */
export const momentAbout = (line: Line, point: Vector, force: Vector): number =>
  triple(line.direction, minus(point, line.point), force);
