import { cross, dot, minus, plus, vector, type Vector } from './vector.ts';

/** A rotation by a fixed angle about a fixed direction, ready to be applied to many vectors. */
export interface Rotation {
  readonly axis: Vector;
  readonly sine: number;
  readonly cosine: number;
}

/**
 * The right-handed rotation by `angle` about the direction `axis`.
 *
 * @param axis direction, length 1
 * @param angle radians
 */
export const rotation = (axis: Vector, angle: number): Rotation => ({
  axis,
  sine: Math.sin(angle),
  cosine: Math.cos(angle),
});

/**
 * A free vector after the rotation: Rodrigues' formula
 * v cos θ + (u × v) sin θ + u (u·v)(1 − cos θ).
 *
 * Source: Rodrigues 1840, as in any text on rigid bodies (from memory).
 */
export function turned(v: Vector, { axis, sine, cosine }: Rotation): Vector {
  const sideways = cross(axis, v);
  const kept = dot(axis, v) * (1 - cosine);
  return vector(
    v.x * cosine + sideways.x * sine + axis.x * kept,
    v.y * cosine + sideways.y * sine + axis.y * kept,
    v.z * cosine + sideways.z * sine + axis.z * kept,
  );
}

/** A point after the rotation about the parallel line through `pivot`. */
export const turnedAbout = (point: Vector, pivot: Vector, by: Rotation): Vector =>
  plus(pivot, turned(minus(point, pivot), by));
