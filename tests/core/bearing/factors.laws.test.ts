import fc from 'fast-check';
import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { anyKind, between, rowOf } from './arbitraries.ts';

test('a steeper row takes more thrust before it counts, and then counts it less', () => {
  fc.assert(
    fc.property(anyKind, between(20, 45), between(20, 45), (kind, one, other) => {
      fc.pre(Math.abs(one - other) > 1e-6);
      const flat = rowOf(kind, 1, Math.min(one, other)).factors;
      const steep = rowOf(kind, 1, Math.max(one, other)).factors;
      expect(steep.e).toBeGreaterThan(flat.e);
      expect(steep.Y).toBeLessThan(flat.Y);
      expect(steep.X).toBeLessThanOrEqual(flat.X);
    }),
  );
});

test('e·Y of tapered rollers is 0.6 whatever the angle', () => {
  fc.assert(
    fc.property(between(0.1, 45), (angle) => {
      const { e, Y } = rowOf('roller', 1, angle).factors;
      expect(e * Y).toBeCloseTo(0.6, 12);
    }),
  );
});

test('a row keeps the contact angle that its factors were looked up for', () => {
  fc.assert(
    fc.property(between(20, 45), (angle) => {
      expect(rowOf('ball', 27e3, angle).contactAngle).toBe(radians(angle));
    }),
  );
});
