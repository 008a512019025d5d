import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirroredCorner } from '#core/mirror.ts';
import { anyCorner } from './corner-arbitraries.ts';

describe('the mirror image of a corner', () => {
  test('is on the other side, and its own mirror image is the corner again', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const other = mirroredCorner(corner);
        expect(other.side).not.toBe(corner.side);
        expect(mirroredCorner(other)).toEqual(corner);
      }),
    );
  });

  test('of a bare corner is as bare', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const other = mirroredCorner({ ...corner, pivots: undefined, tieRod: undefined });
        expect(other.pivots).toBeUndefined();
        expect(other.tieRod).toBeUndefined();
      }),
    );
  });
});
