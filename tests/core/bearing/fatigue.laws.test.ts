import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meanLoad } from '#core/bearing/duty.ts';
import { fatigueShares } from '#core/bearing/fatigue.ts';
import { ratingLife } from '#core/bearing/life.ts';

const load = fc.double({ min: 100, max: 20_000, noNaN: true });
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

test('what a step takes is its revolutions in the life of the whole over its own rating life', () => {
  fc.assert(
    fc.property(share, load, load, (first, a, b) => {
      const steps = [
        { share: first, load: a },
        { share: 1 - first, load: b },
      ];
      const life = ratingLife('ball', 30_000, meanLoad(steps, 3));
      const taken = steps.map(
        (step) => (step.share * life) / ratingLife('ball', 30_000, step.load),
      );
      const shares = fatigueShares(steps, 3);
      shares.forEach((one, i) => {
        expect(one).toBeCloseTo(taken[i] ?? NaN, 9);
      });
      expect((shares[0] ?? NaN) + (shares[1] ?? NaN)).toBeCloseTo(1, 12);
    }),
  );
});
