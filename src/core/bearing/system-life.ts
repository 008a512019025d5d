import type { RowKind } from './factors.ts';

/** A row or bearing that has to last for the whole to last. */
export interface Member {
  readonly kind: RowKind;
  /** Rating life, in any one unit. */
  readonly life: number;
}

/**
 * Exponent w of the life of a system: 10/9 for balls, 9/8 for rollers. Where both kinds are together
 * 10/9, since it gives the shorter life and so errs on the cautious side.
 *
 * Source: Lundberg and Palmgren, as in bearing makers' handbooks (from memory). Others use 1.1 for both
 * kinds, or 1.5 (from memory).
 */
export const systemExponent = (kinds: readonly RowKind[]): number =>
  kinds.includes('ball') ? 10 / 9 : 9 / 8;

/**
 * Rating life of several rows together, L = (Σ L_j^−w)^(−1/w), in the members' unit: shorter than the
 * shortest of them, because any one of them may be the first to fail.
 *
 * Source: as for `systemExponent`.
 */
export function systemLife(members: readonly Member[]): number {
  const w = systemExponent(members.map(({ kind }) => kind));
  return members.reduce((sum, { life }) => sum + life ** -w, 0) ** (-1 / w);
}
