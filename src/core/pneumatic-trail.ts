/**
 * Pneumatic trail of a tyre by the brush model with a parabolic pressure, t = ℓ w³/(1 + w + w²) with
 * w = ∛(1 − F/F_max): how far behind the contact centre the side force acts, in metres. A third of ℓ at
 * first, nought at the limit, where the whole print slides.
 *
 * @param force F across the tyre in newtons; its sign does not matter. At and past the limit the trail is nought
 * @param limit F_max, the most that the tyre can hold to the side, in newtons, more than 0
 * @param halfLength ℓ, half the length of the tyre's print, in metres
 *
 * A model: a rigid carcass, one friction value, no camber. Real tyres' trail can even change its sign at the limit.
 *
 * Source: Pacejka, Tire and Vehicle Dynamics, chapter 3, brush model (from memory).
 */
export function pneumaticTrail(force: number, limit: number, halfLength: number): number {
  const left = Math.max(0, 1 - Math.abs(force) / limit);
  const w = Math.cbrt(left);
  return (halfLength * left) / (1 + w + w * w);
}
