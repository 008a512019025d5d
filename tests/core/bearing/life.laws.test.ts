import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lifeDistance_km, lifeExponent, ratingLife } from '#core/bearing/life.ts';
import { anyKind, anyRadius, between } from './arbitraries.ts';

test('k times the load divides the life by k to the exponent', () => {
  fc.assert(
    fc.property(
      anyKind,
      between(5e3, 90e3),
      between(100, 4e4),
      between(0.2, 5),
      (kind, rating, load, k) => {
        const ratio = ratingLife(kind, rating, load) / ratingLife(kind, rating, k * load);
        expect(ratio / k ** lifeExponent(kind)).toBeCloseTo(1, 9);
      },
    ),
  );
});

test('rollers outlive balls of the same rating below it and fall short above it', () => {
  fc.assert(
    fc.property(between(1.001, 50), (ratio) => {
      expect(ratingLife('roller', ratio, 1)).toBeGreaterThan(ratingLife('ball', ratio, 1));
      expect(ratingLife('roller', 1, ratio)).toBeLessThan(ratingLife('ball', 1, ratio));
    }),
  );
});

test('way grows with the life and with the radius', () => {
  fc.assert(
    fc.property(between(1, 1e4), anyRadius, (life, radius) => {
      expect(lifeDistance_km(2 * life, radius)).toBeCloseTo(2 * lifeDistance_km(life, radius), 3);
      expect(lifeDistance_km(life, 2 * radius)).toBeCloseTo(2 * lifeDistance_km(life, radius), 3);
    }),
  );
});
