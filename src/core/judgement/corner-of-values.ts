import { downInWheelPlane, spinAxis } from '../corner.ts';
import { lineThrough } from '../line.ts';
import { plus, vector, type Vector } from '../vector.ts';
import type { BenchCorner, FittedCar, Values } from './fitted-car.ts';

/** Height of a stand-in for the upper pivot above the lower one, where the angles are known: any will do, in metres. */
const RISE = 0.5;

/**
 * The left front corner that the inputs describe, straight ahead: origin on the ground, in the middle of the car, below the
 * wheel centre.
 *
 * The loaded radius follows from the height of the wheel centre, R = h/cos γ, and the wheel centre across from the track. From the rim line,
 * half a rim outboard of the wheel centre, the pivots lie inboard; or the upper one follows from the sheet’s
 * angles, U = L + (−tan τ, −tan σ, 1) times any height.
 */
export function cornerOfValues(car: FittedCar, value: Values): BenchCorner {
  const camber = value('camber_deg');
  const spin = spinAxis('left', camber, value('toe_deg'));
  const hubUp = value('hubUp_mm');
  const loadedRadius = hubUp / Math.cos(camber);
  const across = value('track_mm') / 2 - loadedRadius * downInWheelPlane(spin).y;
  const rimLine = across + value('halfRim_mm');
  const lower = vector(value('lowerAhead_mm'), rimLine - value('lowerIn_mm'), value('lowerUp_mm'));
  const upper = upperPivot(car, value, lower, rimLine);
  const outer = plus(lower, vector(value('rodAhead_mm'), car.rod.outer.y, car.rod.outer.z));
  return {
    side: 'left',
    axis: lineThrough(lower, upper),
    pivots: { lower, upper },
    wheelCentre: vector(0, across, hubUp),
    spin,
    loadedRadius,
    tieRod: { outer, inner: plus(outer, car.rod.inner) },
  };
}

function upperPivot(
  { axisFrom }: FittedCar,
  value: Values,
  lower: Vector,
  rimLine: number,
): Vector {
  if (axisFrom === 'pivots')
    return vector(value('upperAhead_mm'), rimLine - value('upperIn_mm'), value('upperUp_mm'));
  const slope = vector(-Math.tan(value('caster_deg')), -Math.tan(value('inclination_deg')), 1);
  return plus(lower, vector(RISE * slope.x, RISE * slope.y, RISE));
}
