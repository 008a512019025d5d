import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { loadFactors } from '#core/bearing/factors.ts';

describe('load factors', () => {
  test('of balls between two lines of the table lie on the straight line between them', () => {
    const outcome = loadFactors('ball', radians(37.5));
    expect(outcome.ok && outcome.value.e).toBeCloseTo((0.95 + 1.14) / 2, 12);
    expect(outcome.ok && outcome.value.X).toBeCloseTo((0.37 + 0.35) / 2, 12);
    expect(outcome.ok && outcome.value.Y).toBeCloseTo((0.66 + 0.57) / 2, 12);
  });

  test('of balls exist at both ends of the table, even when rounding has moved the angle past them', () => {
    expect(loadFactors('ball', radians(20) - 1e-15).ok).toBe(true);
    expect(loadFactors('ball', radians(45) + 1e-15).ok).toBe(true);
  });

  test.each([19.99, 45.01, 0, -30, Number.NaN, Number.POSITIVE_INFINITY])(
    'of balls do not exist at %f degrees',
    (angle) => {
      expect(loadFactors('ball', radians(angle)).ok).toBe(false);
    },
  );

  test.each([0, -15, 45.01, Number.NaN])('of rollers do not exist at %f degrees', (angle) => {
    expect(loadFactors('roller', radians(angle)).ok).toBe(false);
  });

  test('that do not exist are a fault that says what is allowed and leaves the path to the caller', () => {
    expect(loadFactors('ball', radians(50))).toEqual({
      ok: false,
      faults: [
        {
          path: '',
          wrong: 'is 50 degrees',
          allowed: 'a contact angle from 20 to 45 degrees in a ball row',
        },
      ],
    });
  });
});
