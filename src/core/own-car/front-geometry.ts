import type { Model } from '../uncertainty/linear.ts';
import type { ModelOfSeveral } from '../uncertainty/monte-carlo.ts';

/** What follows from the readings. */
export const RESULT_IDS = ['scrubRadius', 'spindleOffset', 'inclination'] as const;

/** Values of the seven readings. */
type Seven = [number, number, number, number, number, number, number];

export type ResultId = (typeof RESULT_IDS)[number];

export const isResultId = (id: string): id is ResultId =>
  (RESULT_IDS as readonly string[]).includes(id);

/**
 * Scrub radius, spindle offset and inclination of a corner from the readings of `READINGS`, in their order, from
 * the front: tan σ = (x_U − x_L)/(z_U − z_L) with x inboard of the rim line; the axis at height z is at
 * x_L + (z − z_L) tan σ; the wheel centre at x_C = w and height h, the contact centre at x_C + h tan γ. Then
 * r = x_G − x_P and q = x_A − x_C, both positive when the axis is inboard.
 *
 * Straight ahead and without toe this is the geometry of the conventions; a toe of a degree changes r and q by
 * less than a part in five thousand of the trail.
 *
 * @param inputs metres and radians
 * @returns the results in the order of `RESULT_IDS`, metres and radians
 *
 * Source: plane trigonometry, on the definitions of ISO 8855:2011 (from memory).
 */
export const frontGeometry: ModelOfSeveral = (inputs) => {
  const [w, lowerIn, upperIn, lowerUp, upperUp, h, camber] = Array.from(inputs) as Seven;
  const slope = (upperIn - lowerIn) / (upperUp - lowerUp);
  return [
    lowerIn - lowerUp * slope - (w + h * Math.tan(camber)),
    lowerIn + (h - lowerUp) * slope - w,
    Math.atan(slope),
  ];
};

/** One of the results alone. */
export function modelOf(id: ResultId): Model {
  const index = RESULT_IDS.indexOf(id);
  return (inputs) => frontGeometry(inputs)[index] ?? NaN;
}

/**
 * How far inboard of the rim line the axis passes at a height above the floor, in metres: surest between the two
 * pivots, less and less sure the farther the axis is carried on beyond them.
 *
 * @param height in metres; 0 is the floor
 */
export const axisInAt =
  (height: number): Model =>
  (inputs) => {
    const lowerIn = inputs[1] ?? NaN;
    const upperIn = inputs[2] ?? NaN;
    const lowerUp = inputs[3] ?? NaN;
    const upperUp = inputs[4] ?? NaN;
    return lowerIn + ((height - lowerUp) * (upperIn - lowerIn)) / (upperUp - lowerUp);
  };
