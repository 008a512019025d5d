import { expect, test } from 'vitest';
import { adjustedLife, reliabilityFactor } from '#core/bearing/reliability.ts';

test('at 90 % the adjusted life is the rating life', () => {
  expect(reliabilityFactor(0.9)).toBe(1);
  expect(adjustedLife(400, 0.9)).toBe(400);
});

test('at 99 % a quarter of the rating life is left', () => {
  expect(adjustedLife(400, 0.99)).toBeCloseTo(99.3, 1);
});

test.each([0.8999, 0.99951, 1, 95, Number.NaN])('a reliability of %f is out of range', (value) => {
  expect(() => reliabilityFactor(value)).toThrow(RangeError);
});
