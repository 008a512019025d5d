import { describe, expect, test } from 'vitest';
import { MINIMUM_LIFE_1990, reliabilityFactor } from '#core/bearing/reliability.ts';

const ISO_2007 = 'ISO 281:2007, Table 12 (from memory)';
const ISO_1990 = 'ISO 281:1990, as printed in the SKF ConCentra manual, p. 9, and by RBC Bearings';

// Tolerance in both tables: half a unit of the last digit printed.
describe('factor a1 of 2007', () => {
  test.each([
    { percent: 90, factor: 1, half: 0.005, source: ISO_2007 },
    { percent: 95, factor: 0.64, half: 0.005, source: ISO_2007 },
    { percent: 96, factor: 0.55, half: 0.005, source: ISO_2007 },
    { percent: 97, factor: 0.47, half: 0.005, source: ISO_2007 },
    { percent: 98, factor: 0.37, half: 0.005, source: ISO_2007 },
    { percent: 99, factor: 0.25, half: 0.005, source: ISO_2007 },
    { percent: 99.2, factor: 0.22, half: 0.005, source: ISO_2007 },
    { percent: 99.4, factor: 0.19, half: 0.005, source: ISO_2007 },
    { percent: 99.6, factor: 0.16, half: 0.005, source: ISO_2007 },
    { percent: 99.8, factor: 0.12, half: 0.005, source: ISO_2007 },
    { percent: 99.9, factor: 0.093, half: 0.0005, source: ISO_2007 },
    { percent: 99.92, factor: 0.087, half: 0.0005, source: ISO_2007 },
    { percent: 99.94, factor: 0.08, half: 0.0005, source: ISO_2007 },
    { percent: 99.95, factor: 0.077, half: 0.0005, source: ISO_2007 },
  ])('$percent %: $factor ($source)', ({ percent, factor, half }) => {
    expect(Math.abs(reliabilityFactor(percent / 100) - factor)).toBeLessThanOrEqual(half);
  });
});

describe('factor a1 of 1990', () => {
  test.each([
    { percent: 90, factor: 1, source: ISO_1990 },
    { percent: 95, factor: 0.62, source: ISO_1990 },
    { percent: 96, factor: 0.53, source: ISO_1990 },
    { percent: 97, factor: 0.44, source: ISO_1990 },
    { percent: 98, factor: 0.33, source: ISO_1990 },
    { percent: 99, factor: 0.21, source: ISO_1990 },
  ])('$percent %: $factor ($source)', ({ percent, factor }) => {
    const ours = reliabilityFactor(percent / 100, MINIMUM_LIFE_1990);
    expect(Math.abs(ours - factor)).toBeLessThanOrEqual(0.005);
  });
});

test('a textbook bearing reaches its life with the reliability that the textbook finds', () => {
  const source = "Shigley's Mechanical Engineering Design, problem 11-1, solution sheet";
  const life = (25.5 / (1.2 * 2.5)) ** 3;
  // The textbook has a minimum life of 2 % and a slope of 1.483 where the standard has 5 % and 1.5, and prints
  // the reliability with three digits: 1.5 % of life.
  expect(Math.abs((reliabilityFactor(0.92) * life) / 525 - 1), source).toBeLessThanOrEqual(0.015);
});
