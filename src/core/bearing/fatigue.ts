import type { DutyStep } from './duty.ts';

/**
 * What each step of a duty cycle takes of a row's life, share_i P_i^p / Σ share_j P_j^p: numbers from 0 to 1
 * that add up to 1; all 0 where no step loads the row.
 *
 * @param steps equivalent loads in newtons, with shares by revolutions
 * @param exponent p of the life equation
 *
 * Source: linear damage after Palmgren, on which the mean load rests too (from memory).
 */
export function fatigueShares(steps: readonly DutyStep[], exponent: number): readonly number[] {
  const parts = steps.map(({ share, load }) => share * load ** exponent);
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return parts.map((part) => (whole > 0 ? part / whole : 0));
}
