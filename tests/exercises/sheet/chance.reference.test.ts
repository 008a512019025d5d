import { describe, expect, test } from 'vitest';
import { chanceOfThree, correlation, fisher, wilson } from '#exercises/sheet/chance.ts';

describe('a share of a class, with its interval by Wilson', () => {
  const source =
    'Newcombe, Statistics in Medicine 17 (1998), p. 857, table I, method 3, the score method without continuity correction (from memory)';
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])(`%i of %i: %f to %f (${source})`, (count, n, low, high) => {
    const estimate = wilson(count, n);
    expect(estimate.value).toBeCloseTo(count / n, 12);
    // Printed with four decimals.
    expect(estimate.low).toBeCloseTo(low, 4);
    expect(estimate.high).toBeCloseTo(high, 4);
  });
});

describe('a correlation with its interval by Fisher', () => {
  // Worked by hand: atanh 0.5 = 0.549306; 1.959964/√27 = 0.377195; tanh 0.172111 = 0.170432, tanh 0.926501 = 0.72896.
  test('0.5 of 30 pairs lies between 0.170 and 0.729', () => {
    const { low, high } = fisher(0.5, 30);
    expect(low).toBeCloseTo(0.1704, 4);
    expect(high).toBeCloseTo(0.729, 4);
  });

  test('nought of 30 pairs is known to ± 0.36', () => {
    expect(fisher(0, 30).high).toBeCloseTo(0.36, 2);
    expect(fisher(0, 30).low).toBeCloseTo(-0.36, 2);
  });

  test('a perfect one has no interval to speak of', () => {
    expect(fisher(1, 30)).toEqual({ value: 1, low: 1, high: 1 });
  });

  // Worked by hand: means 3 and 4, Σdxdy = 6, Σdx² = 10, Σdy² = 6, so r = 6/√60.
  test('of five pairs comes to 0.775', () => {
    expect(correlation([1, 2, 3, 4, 5], [2, 4, 5, 4, 5])).toBeCloseTo(6 / Math.sqrt(60), 12);
  });

  test('does not exist where nothing varies', () => {
    expect(correlation([1, 1, 1], [1, 2, 3])).toBeUndefined();
  });
});

describe('shares of three groups', () => {
  const source =
    'Tables of chi-squared, two degrees of freedom: 5.991 is passed in 5 of 100, 9.210 in 1 of 100 (from memory)';
  test.each([
    [5.991, 0.05],
    [9.21, 0.01],
  ])(
    `that differ by a chi-squared of %f do so with a chance of %f (${source})`,
    (squares, chance) => {
      // Two groups of 200 that are d above and below one half, and one at it: χ² = 2·(200 d)²/50.
      const d = Math.sqrt((squares * 50) / 2) / 200;
      const groups = [0.5 + d, 0.5, 0.5 - d].map((share) => ({ right: 200 * share, n: 200 }));
      expect(chanceOfThree(groups)).toBeCloseTo(chance, 4);
    },
  );

  test('that all have everything right are alike', () => {
    expect(chanceOfThree([1, 2, 3].map((n) => ({ right: n, n })))).toBe(1);
  });
});
