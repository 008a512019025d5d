import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  MINIMUM_LIFE_1990,
  MINIMUM_LIFE_2007,
  reliabilityFactor,
} from '#core/bearing/reliability.ts';
import { between } from './arbitraries.ts';

test('to be surer costs life', () => {
  fc.assert(
    fc.property(between(0.9, 0.9995), between(0.9, 0.9995), (one, other) => {
      fc.pre(Math.abs(one - other) > 1e-9);
      const sure = reliabilityFactor(Math.max(one, other));
      expect(sure).toBeLessThan(reliabilityFactor(Math.min(one, other)));
    }),
  );
});

test('no reliability takes more than all but the minimum life', () => {
  fc.assert(
    fc.property(between(0.9, 0.9995), (reliability) => {
      expect(reliabilityFactor(reliability)).toBeGreaterThan(MINIMUM_LIFE_2007);
      expect(reliabilityFactor(reliability)).toBeLessThanOrEqual(1);
    }),
  );
});

test('the newer edition is never harsher than the older', () => {
  fc.assert(
    fc.property(between(0.9, 0.9995), (reliability) => {
      const older = reliabilityFactor(reliability, MINIMUM_LIFE_1990);
      expect(reliabilityFactor(reliability)).toBeGreaterThanOrEqual(older);
    }),
  );
});
