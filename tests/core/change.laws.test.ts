import fc from 'fast-check';
import { describe, test } from 'vitest';
import { changed, NO_CHANGE, type Change } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { distance } from '#core/vector.ts';
import { anyAngle_deg, anyChange, anyCorner, between } from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

describe('a change', () => {
  test('of nothing changes nothing', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        expectSameCorner(changed(corner, NO_CHANGE), corner, 0);
      }),
    );
  });

  test('by two spacers is that by one as thick as both', () => {
    fc.assert(
      fc.property(anyCorner, between(0, 0.05), between(0, 0.05), (corner, first, second) => {
        const once = changed(corner, { ...NO_CHANGE, spacer: first + second });
        const twice = changed(changed(corner, { ...NO_CHANGE, spacer: first }), {
          ...NO_CHANGE,
          spacer: second,
        });
        expectSameCorner(twice, once);
      }),
    );
  });

  test('of inset undoes a spacer of the same size', () => {
    fc.assert(
      fc.property(anyCorner, between(0, 0.05), (corner, spacer) => {
        expectSameCorner(changed(corner, { ...NO_CHANGE, spacer, inset: spacer }), corner);
      }),
    );
  });

  test('of camber can be taken back', () => {
    fc.assert(
      fc.property(
        anyCorner,
        anyAngle_deg(-4, 4),
        anyAngle_deg(-4, 4),
        (corner, camberAtUpperPivot, camberAtCarrier) => {
          const there = changed(corner, { ...NO_CHANGE, camberAtUpperPivot, camberAtCarrier });
          const back = changed(there, {
            ...NO_CHANGE,
            camberAtUpperPivot: -camberAtUpperPivot,
            camberAtCarrier: -camberAtCarrier,
          });
          expectSameCorner(back, corner);
        },
      ),
    );
  });

  test('of camber at the upper pivot takes its angle from the inclination', () => {
    fc.assert(
      fc.property(anyCorner, anyAngle_deg(-5, 5), (corner, camberAtUpperPivot) => {
        const after = changed(corner, { ...NO_CHANGE, camberAtUpperPivot });
        expectClose(
          measure(after).inclination,
          measure(corner).inclination - camberAtUpperPivot,
          1e-12,
        );
      }),
    );
  });

  test('of camber keeps the carrier rigid', () => {
    fc.assert(
      fc.property(
        anyCorner,
        anyAngle_deg(-5, 5),
        anyAngle_deg(-5, 5),
        (corner, camberAtUpperPivot, camberAtCarrier) => {
          const after = changed(corner, { ...NO_CHANGE, camberAtUpperPivot, camberAtCarrier });
          const reach = ({ wheelCentre, tieRod, pivots }: Corner) => [
            distance(wheelCentre, tieRod?.outer ?? wheelCentre),
            distance(wheelCentre, pivots?.lower ?? wheelCentre),
          ];
          const now = reach(after);
          reach(corner).forEach((length, index) => {
            expectClose(now[index] ?? NaN, length, 1e-13);
          });
        },
      ),
    );
  });

  test('is camber first, then the wheel, then the radius', () => {
    fc.assert(
      fc.property(anyCorner, anyChange, (corner, change) => {
        const camber = { ...change, spacer: 0, inset: 0, loadedRadius: 0 };
        const wheel = { ...NO_CHANGE, spacer: change.spacer, inset: change.inset };
        const radius = { ...NO_CHANGE, loadedRadius: change.loadedRadius };
        const stepwise = changed(changed(changed(corner, camber), wheel), radius);
        expectSameCorner(changed(corner, change), stepwise);
      }),
    );
  });

  test('is the same on the other side of the car', () => {
    fc.assert(
      fc.property(anyCorner, anyChange, (corner, change: Change) => {
        expectSameCorner(
          changed(mirroredCorner(corner), change),
          mirroredCorner(changed(corner, change)),
        );
      }),
    );
  });
});

function expectSameCorner(actual: Corner, expected: Corner, within = 1e-13): void {
  expectNear(actual.axis.point, expected.axis.point, within);
  expectNear(actual.axis.direction, expected.axis.direction, within);
  expectNear(actual.wheelCentre, expected.wheelCentre, within);
  expectNear(actual.spin, expected.spin, within);
  expectClose(actual.loadedRadius, expected.loadedRadius, within);
  if (actual.pivots && expected.pivots)
    expectNear(actual.pivots.upper, expected.pivots.upper, within);
  if (actual.tieRod && expected.tieRod)
    expectNear(actual.tieRod.outer, expected.tieRod.outer, within);
}
