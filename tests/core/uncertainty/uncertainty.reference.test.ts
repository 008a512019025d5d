import { describe, expect, test } from 'vitest';
import { combined } from '#core/uncertainty/linear.ts';
import { type Measurement, type Shape } from '#core/uncertainty/measurement.ts';
import { tried } from '#core/uncertainty/monte-carlo.ts';
import { normalBelow } from '#core/uncertainty/normal.ts';
import { spreadOf, type Spread } from '#core/uncertainty/spread.ts';
import { seeded } from './seeded.ts';

const about = (value: number, standard: number, shape: Shape = 'normal'): Measurement => ({
  value,
  standard,
  shape,
});
const within = (least: number, most: number): Measurement =>
  about((least + most) / 2, (most - least) / 2 / Math.sqrt(3), 'rectangular');

function spread(
  model: (inputs: ArrayLike<number>) => number,
  inputs: readonly Measurement[],
  count: number,
): Spread {
  const [column = new Float64Array()] = tried({
    inputs,
    model: (values) => [model(values)],
    results: 1,
    count,
    uniform: seeded(2008),
  });
  return spreadOf(column);
}

const sum = (x: ArrayLike<number>): number => Array.from(x).reduce((total, y) => total + y, 0);

describe.each([{ source: 'JCGM 100:2008, H.1, the end gauge (from memory)' }])('$source', () => {
  // Table H.1: l = l_S + d − l_S (δα θ + α_S δθ), in nanometres.
  // Tolerance: the standard rounds each share to three digits and the sum to two.
  const inputs = [
    about(50_000_623, 25),
    about(215, 9.7),
    about(0, 0.58e-6),
    about(-0.1, 0.41),
    about(11.5e-6, 1.2e-6),
    about(0, 0.029),
  ];
  const model = ([
    lS = 0,
    d = 0,
    dAlpha = 0,
    theta = 0,
    alpha = 0,
    dTheta = 0,
  ]: readonly number[]) => lS + d - lS * (dAlpha * theta + alpha * dTheta);
  const gauge = (x: ArrayLike<number>): number => model(Array.from(x));

  test('has the combined standard uncertainty of the example, and its shares', () => {
    const { value, standard, contributions } = combined(gauge, inputs);
    expect(Math.round(value)).toBe(50_000_838);
    expect(Math.abs(standard - 32)).toBeLessThan(0.5);
    const sizes = contributions.map(Math.abs);
    for (const [i, size] of [25, 9.7, 2.9, 0, 0, 16.6].entries()) {
      expect(Math.abs((sizes[i] ?? NaN) - size)).toBeLessThan(0.1);
    }
  });

  test('comes to 34 nm with what a straight line leaves out', () => {
    // H.1.7: second-order terms add 11.7 nm and 1.7 nm in squares (from memory).
    // Tolerance: half of the last printed digit, and three standard errors of 200 000 trials (0.16 nm).
    const { standard } = spread(gauge, inputs, 200_000);
    expect(Math.abs(standard - 34)).toBeLessThan(0.66);
  });
});

/** Tolerances: half of the last digit and the scatter of 200 000 trials. */
describe.each([{ source: 'JCGM 101:2008, 9.2, a sum of four inputs (from memory)' }])(
  '$source',
  () => {
    test('that are normal: u = 2.0, and 95 % within ±3.92', () => {
      const inputs = Array.from({ length: 4 }, () => about(0, 1));
      expect(combined(sum, inputs).standard).toBeCloseTo(2, 12);
      const { standard, least, most } = spread(sum, inputs, 200_000);
      expect(Math.abs(standard - 2)).toBeLessThan(0.02);
      expect(Math.abs(least + 3.92)).toBeLessThan(0.05);
      expect(Math.abs(most - 3.92)).toBeLessThan(0.05);
    });

    test('that are rectangular: the ends are ±2√3 (2 − (3/5)^¼)', () => {
      const end = 2 * Math.sqrt(3) * (2 - 0.6 ** 0.25);
      expect(end).toBeCloseTo(3.88, 2);
      const inputs = Array.from({ length: 4 }, () => about(0, 1, 'rectangular'));
      const { least, most } = spread(sum, inputs, 200_000);
      expect(Math.abs(least + end)).toBeLessThan(0.04);
      expect(Math.abs(most - end)).toBeLessThan(0.04);
    });

    test('of which one rectangular one is ten times wider: u = 10.1, and 95 % within ±17.0', () => {
      const inputs = [1, 1, 1, 10].map((u) => about(0, u, 'rectangular'));
      expect(Math.abs(combined(sum, inputs).standard - 10.1)).toBeLessThan(0.06);
      const { least, most } = spread(sum, inputs, 200_000);
      expect(Math.abs(least + 17)).toBeLessThan(0.1);
      expect(Math.abs(most - 17)).toBeLessThan(0.1);
    });
  },
);

describe.each([{ source: 'JCGM 101:2008, 9.3, the calibration of a weight in air (from memory)' }])(
  '$source',
  () => {
    // Tables 5 and 6, in milligrams and kg/m³.
    const inputs = [
      about(100_000, 0.05),
      about(1.234, 0.02),
      within(1.1, 1.3),
      within(7000, 9000),
      within(7950, 8050),
    ];
    const weight = (x: ArrayLike<number>): number => {
      const [m = 0, dm = 0, air = 0, rhoW = 1, rhoR = 1] = Array.from(x);
      return (m + dm) * (1 + (air - 1.2) * (1 / rhoW - 1 / rhoR)) - 100_000;
    };

    test('has 0.0539 along the slope, which leaves the air out altogether', () => {
      const { value, standard, shares } = combined(weight, inputs);
      expect(value).toBeCloseTo(1.234, 9);
      expect(Math.abs(standard - 0.0539)).toBeLessThan(0.00005);
      expect(shares.slice(2).every((share) => share < 1e-6)).toBe(true);
    });

    test('has 0.0754 and 1.083 to 1.383 by trials', () => {
      // Tolerance: the scatter of 400 000 trials is about 0.0003 for the ends.
      const { mean, standard, least, most } = spread(weight, inputs, 400_000);
      expect(Math.abs(mean - 1.2341)).toBeLessThan(0.0006);
      expect(Math.abs(standard - 0.0754)).toBeLessThan(0.0004);
      expect(Math.abs(least - 1.0834)).toBeLessThan(0.0015);
      expect(Math.abs(most - 1.3825)).toBeLessThan(0.0015);
    });
  },
);

const NORMAL = { source: 'tables of the standard normal distribution (from memory)' };

// Tolerance: the last printed digit, halved.
test.each([
  { ...NORMAL, z: 0, share: 0.5 },
  { ...NORMAL, z: 1, share: 0.841345 },
  { ...NORMAL, z: 1.6449, share: 0.95 },
  { ...NORMAL, z: 1.96, share: 0.975002 },
  { ...NORMAL, z: -2, share: 0.02275 },
  { ...NORMAL, z: 3, share: 0.99865 },
])('$z standard deviations have $share of a normal distribution below them', ({ z, share }) => {
  expect(Math.abs(normalBelow(z) - share)).toBeLessThan(5e-6);
});
