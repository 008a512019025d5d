import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meanLoad } from '#core/bearing/duty.ts';
import { lifeExponent, ratingLife } from '#core/bearing/life.ts';
import { anyKind, anyShares, between } from './arbitraries.ts';

const anySteps = anyShares.chain((shares) =>
  fc
    .array(between(100, 2e4), { minLength: shares.length, maxLength: shares.length })
    .map((loads) => loads.map((load, i) => ({ share: shares[i] ?? 0, load }))),
);
const anyExponent = anyKind.map(lifeExponent);

describe('mean load', () => {
  test('lies between the least and the greatest load', () => {
    fc.assert(
      fc.property(anySteps, anyExponent, (steps, exponent) => {
        const loads = steps.map(({ load }) => load);
        const mean = meanLoad(steps, exponent);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...loads) * (1 - 1e-12));
        expect(mean).toBeLessThanOrEqual(Math.max(...loads) * (1 + 1e-12));
      }),
    );
  });

  test('stays the same when one phase is told as two', () => {
    fc.assert(
      fc.property(anySteps, anyExponent, between(0, 1), (steps, exponent, part) => {
        const told = steps.flatMap(({ share, load }) => [
          { share: share * part, load },
          { share: share * (1 - part), load },
        ]);
        expect(meanLoad(told, exponent) / meanLoad(steps, exponent)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('gives the life that adds up the parts used in each phase', () => {
    fc.assert(
      fc.property(anySteps, anyKind, (steps, kind) => {
        const used = steps.reduce(
          (sum, { share, load }) => sum + share / ratingLife(kind, 3e4, load),
          0,
        );
        const life = ratingLife(kind, 3e4, meanLoad(steps, lifeExponent(kind)));
        expect(life * used).toBeCloseTo(1, 9);
      }),
    );
  });
});
