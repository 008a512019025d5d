import { describe, expect, test } from 'vitest';
import { lifeDistance_km, ratingLife, withinScope } from '#core/bearing/life.ts';

describe('rating life', () => {
  test('is a million revolutions where the load equals the rating', () => {
    expect(ratingLife('ball', 30e3, 30e3)).toBe(1);
    expect(ratingLife('roller', 30e3, 30e3)).toBe(1);
  });

  test('is 27 million revolutions of balls at a third of the rating', () => {
    expect(ratingLife('ball', 30e3, 10e3)).toBeCloseTo(27, 12);
  });

  test('at half the load is 8 times as long in balls and 10.08 times in rollers', () => {
    expect(ratingLife('ball', 30e3, 5e3) / ratingLife('ball', 30e3, 10e3)).toBeCloseTo(8, 12);
    expect(ratingLife('roller', 30e3, 5e3) / ratingLife('roller', 30e3, 10e3)).toBeCloseTo(
      10.079,
      3,
    );
  });

  test('has no end without load', () => {
    expect(ratingLife('ball', 30e3, 0)).toBe(Infinity);
  });

  test('counts up to half the rating and not beyond', () => {
    expect(withinScope(30e3, 15e3)).toBe(true);
    expect(withinScope(30e3, 15_001)).toBe(false);
  });
});

test('a wheel that rolls 2 m in a turn goes 2000 km in a million turns', () => {
  expect(lifeDistance_km(1, 2 / (2 * Math.PI))).toBeCloseTo(2000, 9);
});
