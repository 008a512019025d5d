import { expect, test } from 'vitest';
import { equivalentLoad } from '#core/bearing/equivalent.ts';

const factors = { e: 0.95, X: 0.37, Y: 0.66 };

test('a thrust up to e times the radial load does not count', () => {
  expect(equivalentLoad(2000, 0, factors)).toBe(2000);
  expect(equivalentLoad(2000, 0.95 * 2000, factors)).toBe(2000);
});

test('above that the radial load counts X times and the thrust Y times', () => {
  expect(equivalentLoad(2000, 3000, factors)).toBeCloseTo(0.37 * 2000 + 0.66 * 3000, 9);
});

test('a row with thrust alone is loaded by Y times the thrust', () => {
  expect(equivalentLoad(0, 3000, factors)).toBeCloseTo(0.66 * 3000, 9);
});

test('a flipped row counts with the magnitude of its load', () => {
  expect(equivalentLoad(-2000, 3000, factors)).toBe(equivalentLoad(2000, 3000, factors));
});
