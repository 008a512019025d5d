import { expect, test } from 'vitest';
import { radialLoads } from '#core/bearing/rows.ts';

/**
 * A shaft on two tapered roller bearings, their load centres 83.8 mm apart, with the radial load 59.9 mm
 * from the first and 23.9 mm from the second: the second stands for the outboard row.
 */
test('the load of a published two-bearing example splits by the levers', () => {
  const source = 'NSK Rolling Bearings, Cat. E1102, chapter 5, example 5 (from memory)';
  const spacing = { loadLineOffset: 0.0599 - 0.0838 / 2, spread: 0.0838 };
  const { outboard, inboard } = radialLoads(spacing, { vertical: 5500, inward: 0 }, 0.3);
  // Printed in whole newtons.
  expect(Math.abs(inboard - 1569), source).toBeLessThanOrEqual(0.6);
  expect(Math.abs(outboard - 3931), source).toBeLessThanOrEqual(0.6);
});
