import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equivalentLoad } from '#core/bearing/equivalent.ts';
import { inducedThrust } from '#core/bearing/thrust.ts';
import { anyRow, between } from './arbitraries.ts';

const anyForce = between(1, 2e4);

test('k times the loads is k times the equivalent load', () => {
  fc.assert(
    fc.property(anyRow, anyForce, anyForce, between(0.1, 10), ({ factors }, radial, thrust, k) => {
      // Away from the limit, where rounding could put the two sides on different branches.
      fc.pre(Math.abs(thrust / radial - factors.e) > 1e-6);
      const once = equivalentLoad(radial, thrust, factors);
      expect(equivalentLoad(k * radial, k * thrust, factors) / (k * once)).toBeCloseTo(1, 9);
    }),
  );
});

test('the two branches meet at e to the two digits that the standard prints', () => {
  fc.assert(
    fc.property(anyRow, anyForce, ({ factors }, radial) => {
      const limit = factors.e * radial;
      const above = equivalentLoad(radial, limit * (1 + 1e-9), factors);
      expect(above / radial).toBeGreaterThan(0.99);
      expect(above / radial).toBeLessThan(1.01);
    }),
  );
});

test('a row’s own induced thrust never counts', () => {
  fc.assert(
    fc.property(anyRow, anyForce, ({ factors }, radial) => {
      expect(equivalentLoad(radial, inducedThrust(radial, factors), factors)).toBe(radial);
    }),
  );
});
