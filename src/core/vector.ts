/**
 * A point or a free vector in vehicle axes (ISO 8855): x forward, y to the left, z up.
 * Points are in metres, forces in newtons, couples in newton metres, directions have length 1.
 */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const vector = (x: number, y: number, z: number): Vector => ({ x, y, z });

/** The zero vector: no displacement, no force, no couple. */
export const NOTHING = vector(0, 0, 0);

export const FORWARD = vector(1, 0, 0);
export const UP = vector(0, 0, 1);

export const plus = (a: Vector, b: Vector): Vector => vector(a.x + b.x, a.y + b.y, a.z + b.z);

export const minus = (a: Vector, b: Vector): Vector => vector(a.x - b.x, a.y - b.y, a.z - b.z);

export const times = (k: number, a: Vector): Vector => vector(k * a.x, k * a.y, k * a.z);

/** The point reached from `a` by going `k` times `b`: a + k·b. */
export const along = (a: Vector, k: number, b: Vector): Vector =>
  vector(a.x + k * b.x, a.y + k * b.y, a.z + k * b.z);

export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;

export const cross = (a: Vector, b: Vector): Vector =>
  vector(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);

/** The triple product a·(b × c). */
export const triple = (a: Vector, b: Vector, c: Vector): number =>
  a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x);

export const length = (a: Vector): number => Math.sqrt(dot(a, a));

export const distance = (a: Vector, b: Vector): number => length(minus(a, b));

/**
 * The direction of `a`, with length 1.
 *
 * @throws RangeError for a vector too short to have a direction (below 1e-12): that is a programmer's
 * error, since documents and forms refuse coincident points before the core sees them.
 */
export function direction(a: Vector): Vector {
  const size = length(a);
  if (!(size > 1e-12)) throw new RangeError(`a vector of length ${size} has no direction`);
  return times(1 / size, a);
}

/** The mirror image in the vehicle's middle plane (y → −y): what makes a right corner out of a left one. */
export const mirrored = (a: Vector): Vector => vector(a.x, -a.y, a.z);
