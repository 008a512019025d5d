import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rowThrusts } from '#core/bearing/thrust.ts';
import { between } from './arbitraries.ts';

const anyInduced = fc.record({ outboard: between(0, 9e3), inboard: between(0, 9e3) });
const anyInward = between(-9e3, 9e3);

describe('thrusts of two rows back to back', () => {
  test('differ by the lateral force', () => {
    fc.assert(
      fc.property(anyInduced, anyInward, (induced, inward) => {
        const { outboard, inboard } = rowThrusts(induced, inward);
        expect(outboard - inboard).toBeCloseTo(inward, 8);
      }),
    );
  });

  test('are never below a row’s own induced thrust, and one row has no more than that', () => {
    fc.assert(
      fc.property(anyInduced, anyInward, (induced, inward) => {
        const thrust = rowThrusts(induced, inward);
        const overOutboard = thrust.outboard - induced.outboard;
        const overInboard = thrust.inboard - induced.inboard;
        expect(Math.min(overOutboard, overInboard)).toBeCloseTo(0, 8);
      }),
    );
  });

  test('swap with the rows when the lateral force changes sides', () => {
    fc.assert(
      fc.property(anyInduced, anyInward, (induced, inward) => {
        const { outboard, inboard } = rowThrusts(induced, inward);
        const swapped = { outboard: induced.inboard, inboard: induced.outboard };
        const mirrored = rowThrusts(swapped, -inward);
        expect(mirrored.outboard).toBeCloseTo(inboard, 8);
        expect(mirrored.inboard).toBeCloseTo(outboard, 8);
      }),
    );
  });

  test('move by no more than the lateral force does: nothing jumps where the sides change', () => {
    fc.assert(
      fc.property(anyInduced, anyInward, between(0, 50), (induced, inward, more) => {
        const before = rowThrusts(induced, inward);
        const after = rowThrusts(induced, inward + more);
        expect(Math.abs(after.outboard - before.outboard)).toBeLessThanOrEqual(more + 1e-9);
        expect(Math.abs(after.inboard - before.inboard)).toBeLessThanOrEqual(more + 1e-9);
      }),
    );
  });
});
