import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { systemLife } from '#core/bearing/system-life.ts';
import { anyKind, between } from './arbitraries.ts';

const anyMember = fc.record({ kind: anyKind, life: between(1, 1e6) });

describe('the life of a system', () => {
  test('is below the shortest, and above it divided by the number of members', () => {
    fc.assert(
      fc.property(fc.array(anyMember, { minLength: 2, maxLength: 5 }), (members) => {
        const shortest = Math.min(...members.map(({ life }) => life));
        const life = systemLife(members);
        expect(life).toBeLessThan(shortest * (1 + 1e-12));
        expect(life).toBeGreaterThan(shortest / members.length);
      }),
    );
  });

  test('does not depend on the order of the members', () => {
    fc.assert(
      fc.property(anyMember, anyMember, (one, other) => {
        expect(systemLife([one, other]) / systemLife([other, one])).toBeCloseTo(1, 12);
      }),
    );
  });

  test('is k times as long when every member lives k times as long', () => {
    fc.assert(
      fc.property(anyMember, anyMember, between(0.1, 10), (one, other, k) => {
        const longer = [one, other].map(({ kind, life }) => ({ kind, life: k * life }));
        expect(systemLife(longer) / (k * systemLife([one, other]))).toBeCloseTo(1, 9);
      }),
    );
  });
});
