import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { combined } from '#core/uncertainty/linear.ts';
import { measured, type Shape } from '#core/uncertainty/measurement.ts';
import { tried } from '#core/uncertainty/monte-carlo.ts';
import { chanceOfSign } from '#core/uncertainty/normal.ts';
import { shareAbove, spreadOf } from '#core/uncertainty/spread.ts';
import { expectClose } from '../near.ts';
import { seeded } from './seeded.ts';

const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const shapes = fc.constantFrom<Shape>('normal', 'rectangular', 'triangular');
const term = fc.record({
  factor: number(-5, 5),
  value: number(-100, 100),
  half: number(0.01, 10),
  shape: shapes,
});

describe('a straight model', () => {
  test('has exactly the root of the summed squares, whatever the shapes', () => {
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 6 }), (terms) => {
        const inputs = terms.map(({ value, half, shape }) => measured(value, half, shape));
        const model = (x: ArrayLike<number>): number =>
          terms.reduce((sum, { factor }, i) => sum + factor * (x[i] ?? NaN), 3);
        const { standard, contributions, shares } = combined(model, inputs);
        const own = terms.map(({ factor }, i) => factor * (inputs[i]?.standard ?? NaN));
        expectClose(standard, Math.hypot(...own), 1e-9);
        for (const [i, part] of own.entries()) expectClose(contributions[i] ?? NaN, part, 1e-9);
        if (standard > 1e-6) {
          expectClose(
            shares.reduce((sum, share) => sum + share, 0),
            1,
            1e-9,
          );
        }
      }),
    );
  });

  test('gives by trials what it gives along the slope', () => {
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 4 }), fc.integer(), (terms, seed) => {
        fc.pre(terms.some(({ factor }) => Math.abs(factor) > 0.1));
        const inputs = terms.map(({ value, half, shape }) => measured(value, half, shape));
        const model = (x: ArrayLike<number>): number =>
          terms.reduce((sum, { factor }, i) => sum + factor * (x[i] ?? NaN), 0);
        const { value, standard } = combined(model, inputs);
        const [column = new Float64Array()] = tried({
          inputs,
          model: (x) => [model(x)],
          results: 1,
          count: 10_000,
          uniform: seeded(seed),
        });
        const spread = spreadOf(column);
        // Six standard errors: of the mean u/100, of u itself less than u/100.
        expect(Math.abs(spread.mean - value)).toBeLessThan(0.06 * standard);
        expect(Math.abs(spread.standard - standard)).toBeLessThan(0.06 * standard);
        expect(spread.least).toBeLessThan(spread.most);
      }),
      { numRuns: 30 },
    );
  });
});

test('a measurement without doubt takes no share, and the others’ shares stay', () => {
  const model = (x: ArrayLike<number>): number => (x[0] ?? 0) * (x[1] ?? 0);
  const { shares, standard } = combined(model, [measured(2, 0.1), measured(5, 0)]);
  expect(shares).toEqual([1, 0]);
  expect(standard).toBeCloseTo((5 * 0.1) / Math.sqrt(3), 12);
  expect(combined(model, [measured(2, 0), measured(5, 0)]).shares).toEqual([0, 0]);
});

test('the shape decides what ± is worth', () => {
  expect(measured(0, 3, 'rectangular').standard).toBeCloseTo(3 / Math.sqrt(3), 12);
  expect(measured(0, 3, 'triangular').standard).toBeCloseTo(3 / Math.sqrt(6), 12);
  expect(measured(0, 3, 'normal').standard).toBe(1.5);
  expect(() => measured(0, -1)).toThrow(RangeError);
});

test('the chance of a sign goes from even odds to certainty', () => {
  expect(chanceOfSign(0, 1)).toBeCloseTo(0.5, 7);
  expect(chanceOfSign(-2, 1)).toBe(chanceOfSign(2, 1));
  expect(chanceOfSign(2, 1)).toBeCloseTo(0.97725, 5);
  expect(chanceOfSign(1, 0)).toBe(1);
  expect(chanceOfSign(0, 0)).toBe(0.5);
});

describe('trials', () => {
  const inputs = [measured(1, 1, 'normal')];
  const model = (x: ArrayLike<number>): readonly number[] => [x[0] ?? NaN];

  test('are the same for the same seed', () => {
    const run = (seed: number) =>
      tried({ inputs, model, results: 1, count: 50, uniform: seeded(seed) });
    expect(run(7)).toEqual(run(7));
    expect(run(7)).not.toEqual(run(8));
  });

  test('hold the share above nought that the normal distribution says', () => {
    const [column = new Float64Array()] = tried({
      inputs,
      model,
      results: 1,
      count: 100_000,
      uniform: seeded(1),
    });
    // Standard error 0.0005.
    expect(Math.abs(shareAbove(column) - chanceOfSign(1, 0.5))).toBeLessThan(0.003);
  });

  test('are a whole number, and a spread needs two', () => {
    expect(() => tried({ inputs, model, results: 1, count: 0.5, uniform: seeded(1) })).toThrow(
      RangeError,
    );
    expect(() => spreadOf(new Float64Array(1))).toThrow(RangeError);
    expect(() => spreadOf(new Float64Array(9), 1)).toThrow(RangeError);
  });
});

test('the ends of an interval are the values that stand there once all are in order', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 2 }),
      number(0.05, 0.95),
      (list, share) => {
        const { least, most } = spreadOf(Float64Array.from(list), share);
        const sorted = list.toSorted((a, b) => a - b);
        const within = Math.min(list.length - 1, Math.round(share * list.length));
        const first = Math.floor((list.length - within) / 2);
        expect([least, most]).toEqual([
          sorted[first],
          sorted[Math.min(list.length - 1, first + within)],
        ]);
      },
    ),
  );
});
