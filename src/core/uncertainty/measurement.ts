/** How a measured value may lie about its best estimate. */
export type Shape = 'normal' | 'rectangular' | 'triangular';

/** A measured value with its doubt. Independent of the others: what two readings share is an input of its own. */
export interface Measurement {
  /** Best estimate, SI. */
  readonly value: number;
  /** Standard uncertainty u, 0 or more, in the unit of the value. */
  readonly standard: number;
  readonly shape: Shape;
}

/** Half-width of a shape in standard uncertainties; of a normal one that of 95 %, rounded as usual. */
const HALF_WIDTH: Readonly<Record<Shape, number>> = {
  normal: 2,
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
};

/**
 * A measurement from a value and the ± that somebody gives it: u = a/√3 where all within ±a is equally likely,
 * a/√6 where the middle is likelier, a/2 where ±a is meant for 95 in 100.
 *
 * @param halfWidth a, 0 or more, in the unit of the value
 * @throws RangeError for a half-width below 0
 *
 * Source: JCGM 100:2008, 4.3.7, 4.3.9 and 6.2 (from memory).
 */
export function measured(
  value: number,
  halfWidth: number,
  shape: Shape = 'rectangular',
): Measurement {
  if (!(halfWidth >= 0)) throw new RangeError(`a half-width of ${halfWidth}; allowed: 0 or more`);
  return { value, standard: halfWidth / HALF_WIDTH[shape], shape };
}
