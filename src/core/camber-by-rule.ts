import type { AxisAngles } from './swing.ts';

/**
 * Camber that a leaning-in axis adds when the wheel is turned, σ(1 − cos δ), in radians: outboard either way.
 *
 * @param inclination σ in radians, positive when the axis top leans inboard
 * @param turn δ in radians from straight ahead, in or out; within ±40° on a road car
 * Source: rigid rotation to the first order of the lean; common practice.
 */
export const camberFromInclination = (inclination: number, turn: number): number =>
  inclination * (1 - Math.cos(turn));

/**
 * Camber that a leaning-back axis adds when the wheel is turned, τ sin δ, in radians: outboard when the
 * wheel is turned out, inboard when it is turned in.
 *
 * @param caster τ in radians, positive when the axis top leans rearward
 * @param turn δ in radians from straight ahead, positive out: a left wheel to the left, a right one to the right
 * Source: as above; January, SAE 850219, rests on it (method).
 */
export const camberFromCaster = (caster: number, turn: number): number => caster * Math.sin(turn);

/**
 * Camber of a turned wheel by the workshop's rule, γ ≈ γ₀ + σ(1 − cos δ) + τ sin δ, in radians. For a road
 * car it is within 0.3° of what rotation about the axis gives, up to 40° either way.
 *
 * @param camberAhead γ₀ straight ahead, positive when the wheel's top leans outboard
 * @param turn δ as above
 */
export const camberByRule = (
  camberAhead: number,
  { inclination, caster }: AxisAngles,
  turn: number,
): number =>
  camberAhead + camberFromInclination(inclination, turn) + camberFromCaster(caster, turn);
