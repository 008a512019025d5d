import type { Fault } from '../fault.ts';

/** A load and the part of all revolutions made under it. */
export interface DutyStep {
  /** From 0 to 1; the shares of all steps add up to 1. */
  readonly share: number;
  /** Equivalent load in newtons, 0 or more. */
  readonly load: number;
}

/** How far from 1 the shares may add up: room for thirds written with six digits. */
const ROUNDING = 2e-6;

/**
 * Mean equivalent load of a duty cycle, P_m = (Σ share_i P_i^p)^(1/p), in newtons: the steady load that
 * gives the same life.
 *
 * @param steps with shares by revolutions; at constant speed shares by time are the same
 * @param exponent p of the life equation
 *
 * Source: bearing makers' handbooks, "average of fluctuating load"; Mott, Machine Elements in Mechanical
 * Design, 4th ed., chapter 14.
 */
export const meanLoad = (steps: readonly DutyStep[], exponent: number): number =>
  steps.reduce((sum, { share, load }) => sum + share * load ** exponent, 0) ** (1 / exponent);

/** What is wrong with the shares of a duty cycle: nothing, or one fault with an empty path. */
export function shareFaults(shares: readonly number[]): readonly Fault[] {
  const bad = shares.find((share) => !(share >= 0 && share <= 1));
  if (bad !== undefined)
    return [{ path: '', wrong: `has a share of ${bad}`, allowed: 'shares from 0 to 1' }];
  const sum = shares.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - 1) <= ROUNDING) return [];
  return [
    {
      path: '',
      wrong: `has shares that add up to ${Number(sum.toPrecision(9))}`,
      allowed: 'shares that add up to 1',
    },
  ];
}
