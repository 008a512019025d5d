/** What the trade multiplies with in place of `swingFactor(20°)` = 1.462: 1.5, easy on paper, 2.6 % too much. */
export const TRADE_FACTOR = 1.5;

/**
 * The factor of the workshop formulas for a swing from `turn` in to `turn` out: 1/(2 sin δ).
 *
 * @param turn δ in radians, above 0 and below π
 */
export function swingFactor(turn: number): number {
  if (turn > 0 && turn < Math.PI) return 1 / (2 * Math.sin(turn));
  throw new RangeError(`turn is ${turn} rad; allowed: above 0 and below π`);
}

/**
 * Caster by the workshop formula, in the unit of the cambers: τ ≈ (γ_out − γ_in)·factor. It takes the
 * inclination's share of the camber change as equal on both sides, and small angles for their tangents.
 *
 * @param camberOut camber with the wheel turned out (then it gains camber, if the caster is positive)
 * @param camberIn camber with the wheel turned in by the same angle
 * @param factor `swingFactor(turn)`, or `TRADE_FACTOR` for 20°
 * Source: January, SAE 850219 (method); the trade's factor from memory.
 */
export const casterBySwing = (camberOut: number, camberIn: number, factor: number): number =>
  (camberOut - camberIn) * factor;

/**
 * Inclination by the workshop formula, in the unit of the pitches: σ ≈ (φ_out − φ_in)·factor.
 *
 * @param pitchOut pitch with the braked wheel turned out (its front edge has gone up, if the axis leans inboard)
 * @param pitchIn pitch with the wheel turned in by the same angle
 * @param factor as above
 * Source: common practice.
 */
export const inclinationBySwing = (pitchOut: number, pitchIn: number, factor: number): number =>
  (pitchOut - pitchIn) * factor;
