import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomOf } from '#exercises/random.ts';

describe('random numbers of a text', () => {
  test('are the same for the same text', () => {
    const draw = (text: string) => {
      const random = randomOf(text);
      return Array.from({ length: 20 }, () => random.integer(0, 1_000_000));
    };
    expect(draw('a')).toEqual(draw('a'));
    expect(draw('a')).not.toEqual(draw('b'));
  });

  test('stay within both bounds and on their grid', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.integer({ min: -99, max: 99 }),
        fc.nat(99),
        (text, least, more) => {
          const random = randomOf(text);
          const whole = random.integer(least, least + more);
          expect(whole).toBeGreaterThanOrEqual(least);
          expect(whole).toBeLessThanOrEqual(least + more);
          const half = random.grid(least / 2, (least + more) / 2, 0.5);
          expect(Number.isInteger(half * 2)).toBe(true);
          expect(half).toBeGreaterThanOrEqual(least / 2);
          expect(half).toBeLessThanOrEqual((least + more) / 2);
        },
      ),
    );
  });

  test('reach both bounds and every choice', () => {
    const random = randomOf('reach');
    const drawn = Array.from({ length: 200 }, () => random.integer(1, 3));
    expect(new Set(drawn)).toEqual(new Set([1, 2, 3]));
    const picked = Array.from({ length: 200 }, () => random.pick(['a', 'b']));
    expect(new Set(picked)).toEqual(new Set(['a', 'b']));
  });
});
