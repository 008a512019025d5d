import type { Sides } from '../axle.ts';
import { casterOf, inclinationOf } from '../geometry.ts';
import { lineThrough } from '../line.ts';
import { mirroredCorner } from '../mirror.ts';
import { plus, vector } from '../vector.ts';
import { cornerOfValues } from './corner-of-values.ts';
import type { CrossId } from './cross-inputs.ts';
import type { BenchCorner, FittedCar, Values } from './fitted-car.ts';
import type { InputId } from './inputs.ts';

/** Which angle of the left wheel less which difference is that of the right one. */
const CROSS_OF: Partial<Readonly<Record<InputId, CrossId>>> = {
  camber_deg: 'crossCamber_deg',
  caster_deg: 'crossCaster_deg',
  inclination_deg: 'crossInclination_deg',
};

/**
 * Both front corners that the inputs describe, straight ahead. The right one is the mirror image of the left one made with the
 * angles of the right wheel, each that of the left less the difference; all else, the tape’s readings too, both
 * share.
 */
export function standingCorners(car: FittedCar, value: Values): Sides<BenchCorner> {
  const left = cornerOfValues(car, value);
  return { left, right: mirroredBench(car.apart ? otherWheel(car, value) : left) };
}

/** A mirror image has what its original has. */
export const mirroredBench = (corner: BenchCorner): BenchCorner =>
  mirroredCorner(corner) as BenchCorner;

/** The right wheel as a left one. */
function otherWheel(car: FittedCar, value: Values): BenchCorner {
  const corner = cornerOfValues(car, (id) => {
    const cross = CROSS_OF[id];
    return cross === undefined ? value(id) : value(id) - value(cross);
  });
  return car.axisFrom === 'pivots' ? leaned(corner, value) : corner;
}

/**
 * With the pivots measured, on the left, the upper one of the other wheel stands as far along and across the car as its
 * angles ask, at the same height: U = L + (−tan τ, −tan σ, 1) times the height between them.
 */
function leaned(corner: BenchCorner, value: Values): BenchCorner {
  const { axis, pivots, side } = corner;
  const { lower } = pivots;
  const rise = pivots.upper.z - lower.z;
  const caster = casterOf(axis) - value('crossCaster_deg');
  const inclination = inclinationOf(axis, side) - value('crossInclination_deg');
  const upper = plus(lower, vector(-rise * Math.tan(caster), -rise * Math.tan(inclination), rise));
  return { ...corner, axis: lineThrough(lower, upper), pivots: { lower, upper } };
}
