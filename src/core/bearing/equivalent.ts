import type { LoadFactors } from './factors.ts';

/**
 * Equivalent dynamic load of one row: F_r where F_a ≤ e F_r, else X F_r + Y F_a, in newtons.
 *
 * ISO 281 prints the ball factors with two digits, so at F_a = e F_r the two branches meet only to 0.5 %.
 *
 * @param radial F_r in newtons; its sign does not matter
 * @param thrust F_a in newtons, 0 or more
 *
 * Source: ISO 281:2007, 5.3 and 7.3 (from memory).
 */
export function equivalentLoad(radial: number, thrust: number, { e, X, Y }: LoadFactors): number {
  const size = Math.abs(radial);
  return thrust <= e * size ? size : X * size + Y * thrust;
}
