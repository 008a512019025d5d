import { describe, expect, test } from 'vitest';
import { inducedThrust, rowThrusts } from '#core/bearing/thrust.ts';
import { rowOf } from './arbitraries.ts';

const RATIOS =
  'SKF table of axial loads of two single row bearings, reprinted by bearing-centre.com';
const CASES = 'SKF, Rolling bearings, Table 11: back-to-back arrangement (tpsbearing.com, p. 403)';

// Tolerance: printed with two digits.
describe('induced thrust over radial load of ball rows', () => {
  test.each([
    { angle: 20, ratio: 0.5, source: RATIOS },
    { angle: 25, ratio: 0.57, source: RATIOS },
    { angle: 30, ratio: 0.66, source: RATIOS },
    { angle: 40, ratio: 0.88, source: RATIOS },
  ])('$angle degrees: $ratio ($source)', ({ angle, ratio }) => {
    const thrust = inducedThrust(1, rowOf('ball', 1, angle).factors);
    expect(Math.abs(thrust - ratio)).toBeLessThanOrEqual(0.0051);
  });
});

test('induced thrust of a tapered row is 1.25 F_r tan α', () => {
  const source = 'LYC bearing knowledge, Table 1: S = F_r/(2Y); with Y = 0.4 cot α (from memory)';
  const thrust = inducedThrust(1000, rowOf('roller', 1, 20).factors);
  // tan 20° = 0.36397 to five digits.
  expect(Math.abs(thrust - 1250 * 0.36397), source).toBeLessThanOrEqual(0.01);
});

/**
 * The published rules for two like bearings A and B with induced thrusts R·F_rA and R·F_rB. In cases 1 the
 * outer thrust K is directed so that B takes it, in cases 2 so that A does. B stands for the outboard row.
 */
describe('the six published load cases', () => {
  const R = 0.88;
  const K = 1000;
  // No tolerance but for rounding in the last bits.
  test.each([
    { name: '1a', A: 3000, B: 2000, towardB: true, FaA: R * 3000, FaB: R * 3000 + K },
    { name: '1b', A: 2000, B: 3000, towardB: true, FaA: R * 2000, FaB: R * 2000 + K },
    { name: '1c', A: 2000, B: 4000, towardB: true, FaA: R * 4000 - K, FaB: R * 4000 },
    { name: '2a', A: 2000, B: 3000, towardB: false, FaA: R * 3000 + K, FaB: R * 3000 },
    { name: '2b', A: 3000, B: 2000, towardB: false, FaA: R * 2000 + K, FaB: R * 2000 },
    { name: '2c', A: 4000, B: 2000, towardB: false, FaA: R * 4000, FaB: R * 4000 - K },
  ])('case $name', ({ A, B, towardB, FaA, FaB }) => {
    const thrust = rowThrusts({ outboard: R * B, inboard: R * A }, towardB ? K : -K);
    expect(thrust.inboard, CASES).toBeCloseTo(FaA, 9);
    expect(thrust.outboard, CASES).toBeCloseTo(FaB, 9);
  });
});

/**
 * This maker's handbook takes the induced thrust as 0.6 F_r/Y where the others, and we, take 0.5 F_r/Y. So the
 * example is held against the rule of the two rows only, with the induced thrusts it uses itself.
 */
test('a published pair of tapered bearings shares the thrust as printed', () => {
  const source = 'NSK Rolling Bearings, Cat. E1102, chapter 5, example 5 (from memory)';
  const induced = { outboard: (0.6 / 0.73) * 1569, inboard: (0.6 / 1.6) * 3931 };
  const thrust = rowThrusts(induced, 2000);
  // Printed in whole newtons.
  expect(Math.abs(thrust.outboard - 3474), source).toBeLessThanOrEqual(0.6);
});
