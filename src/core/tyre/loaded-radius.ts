import { outerDiameter } from './dimensions.ts';
import { proportional, type Estimate } from './estimate.ts';
import type { Tyre } from './tyre.ts';

/** As shares of half the outer diameter. */
const LOADED_RADIUS: Estimate = {
  value: 0.925,
  least: 0.9,
  most: 0.95,
  assumption:
    'At rest and under its usual load a radial tyre’s centre stands 0.92 to 0.93 of half the outer diameter above the ground; tall sidewalls, much load or little pressure give down to 0.90, low sidewalls or light loads up to 0.95. Measure it where it matters.',
};

/**
 * Estimate of the loaded radius of a standing wheel, in metres: R ≈ 0.925·D/2.
 *
 * Source: ETRTO and WdK tables, static radius (from memory).
 */
export const loadedRadius = (tyre: Tyre): Estimate =>
  proportional(outerDiameter(tyre) / 2, LOADED_RADIUS);
