import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flippedRow, loadLineCrossing, radialLoads } from '#core/bearing/rows.ts';
import { anyLoad, anyRadius, anySpacing } from './arbitraries.ts';

describe('radial loads', () => {
  test('add up to the wheel load', () => {
    fc.assert(
      fc.property(anySpacing, anyLoad, anyRadius, (spacing, load, radius) => {
        const { outboard, inboard } = radialLoads(spacing, load, radius);
        expect(outboard + inboard).toBeCloseTo(load.vertical, 6);
      }),
    );
  });

  test('balance the moment of the tyre force about the mid-plane', () => {
    fc.assert(
      fc.property(anySpacing, anyLoad, anyRadius, (spacing, load, radius) => {
        const { outboard, inboard } = radialLoads(spacing, load, radius);
        const ofRows = ((outboard - inboard) * spacing.spread) / 2;
        const ofTyre = spacing.loadLineOffset * load.vertical - radius * load.inward;
        expect(ofRows).toBeCloseTo(ofTyre, 6);
      }),
    );
  });

  test('swap when the load line and the lateral force change sides', () => {
    fc.assert(
      fc.property(anySpacing, anyLoad, anyRadius, (spacing, load, radius) => {
        const { outboard, inboard } = radialLoads(spacing, load, radius);
        const mirrored = radialLoads(
          { ...spacing, loadLineOffset: -spacing.loadLineOffset },
          { ...load, inward: -load.inward },
          radius,
        );
        expect(mirrored).toEqual({ outboard: inboard, inboard: outboard });
      }),
    );
  });

  test('have flipped a row exactly where the line of action passes outside the pressure centres', () => {
    fc.assert(
      fc.property(anySpacing, anyLoad, anyRadius, (spacing, load, radius) => {
        const crossing = loadLineCrossing(spacing, load, radius);
        const outside = Math.abs(crossing) - spacing.spread / 2;
        fc.pre(Math.abs(outside) > 1e-9);
        const expected = outside < 0 ? undefined : crossing > 0 ? 'inboard' : 'outboard';
        expect(flippedRow(radialLoads(spacing, load, radius))).toBe(expected);
      }),
    );
  });
});
