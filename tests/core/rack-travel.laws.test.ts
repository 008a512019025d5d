import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirroredCorner } from '#core/mirror.ts';
import { steeredOnRack } from '#core/rack-travel.ts';
import { rodDirection, rodLength, rodLever } from '#core/tie-rod.ts';
import { anyCorner, anyRotation } from './corner-arbitraries.ts';
import { valueOf } from './example-corner.ts';
import { expectClose } from './near.ts';

describe('a corner steered on its rack', () => {
  test('keeps the length of its tie rod and the line of its rack', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const { corner: now } = valueOf(steeredOnRack(corner, angle));
        const rod = now.tieRod ?? corner.tieRod;
        expectClose(rodLength(rod), rodLength(corner.tieRod), 1e-12);
        expect(rod.inner.x).toBe(corner.tieRod.inner.x);
        expect(rod.inner.z).toBe(corner.tieRod.inner.z);
      }),
    );
  });

  test('moves the rack by the difference of the inner ends', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const { corner: now, rackTravel = NaN } = valueOf(steeredOnRack(corner, angle));
        expectClose((now.tieRod?.inner.y ?? NaN) - corner.tieRod.inner.y, rackTravel, 1e-12);
      }),
    );
  });

  test('moves the rack the other way on the other side', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const here = valueOf(steeredOnRack(corner, angle)).rackTravel ?? NaN;
        const there = valueOf(steeredOnRack(mirroredCorner(corner), -angle)).rackTravel ?? NaN;
        expectClose(there, -here, 1e-12);
      }),
    );
  });

  test('moves the rack so that the work on both ends of the rod is equal', () => {
    // dΔ/dθ = lever/t_y: the rod's force does as much work on the carrier as on the rack.
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const step = 1e-5;
        const travel = (at: number) => valueOf(steeredOnRack(corner, at)).rackTravel ?? NaN;
        const slope = (travel(angle + step) - travel(angle - step)) / (2 * step);
        const { tieRod } = valueOf(steeredOnRack(corner, angle)).corner;
        const rod = tieRod ?? corner.tieRod;
        expectClose(slope, rodLever(corner.axis, rod) / rodDirection(rod).y, 1e-7);
      }),
    );
  });
});
