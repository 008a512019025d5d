import { outerDiameter } from './dimensions.ts';
import type { Tyre } from './tyre.ts';

/** What another tyre changes, for the same rim centre and the same car. Positive: the fitted tyre has more. */
export interface TyreChange {
  /** Change of the outer diameter, in metres. */
  readonly outerDiameter: number;
  /** The same as a share of the original: 0.012 is 1.2 % more. */
  readonly relative: number;
  /**
   * True speed for each unit of speed on a dial that was right with the original tyre: D_new/D_old, the
   * same as `relative` + 1. Above 1 the car is faster than the dial says.
   */
  readonly trueSpeedPerShown: number;
}

/**
 * Compares two tyres by their unrounded outer diameters. The speedometer counts turns of the wheel, so
 * the true speed follows the rolling circumference, and that the diameter, as long as both tyres have the
 * same ratio of the two (3.05, see rolling.ts); two makes of one size may differ by more than 2 %.
 */
export function compareTyres(original: Tyre, fitted: Tyre): TyreChange {
  const before = outerDiameter(original);
  const after = outerDiameter(fitted);
  return {
    outerDiameter: after - before,
    relative: (after - before) / before,
    trueSpeedPerShown: after / before,
  };
}

/** The true speed when the dial shows `shown` (in the same unit), with a dial that was right before. */
export const trueSpeed = (shown: number, original: Tyre, fitted: Tyre): number =>
  shown * compareTyres(original, fitted).trueSpeedPerShown;
