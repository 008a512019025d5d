import { outerDiameter } from './dimensions.ts';
import { proportional, type Estimate } from './estimate.ts';
import type { Tyre } from './tyre.ts';

/** As shares of the outer diameter. */
const CIRCUMFERENCE: Estimate = {
  value: 3.05,
  least: 3.05 * 0.975,
  most: 3.05 * 1.025,
  assumption:
    'A radial tyre under its usual load and pressure rolls 3.05 outer diameters in one turn; makes and wear differ by about 2.5 % either way.',
};

/**
 * Estimate of the rolling circumference, the way of one turn, in metres: U ≈ 3.05·D. It is shorter than
 * π·D, since the loaded tyre is flat below, and far longer than 2π times the loaded radius, since the
 * belt keeps its length.
 *
 * Source: ETRTO and WdK tables; Reimpell, Stoll and Betzler, Automotive Chassis, section 2.2 (from memory).
 */
export const rollingCircumference = (tyre: Tyre): Estimate =>
  proportional(outerDiameter(tyre), CIRCUMFERENCE);

/** Estimate of the rolling radius, in metres: U/2π. */
export const rollingRadius = (tyre: Tyre): Estimate =>
  proportional(1 / (2 * Math.PI), rollingCircumference(tyre));
