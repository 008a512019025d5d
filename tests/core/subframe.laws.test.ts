import fc from 'fast-check';
import { describe, test } from 'vitest';
import { measure } from '#core/geometry.ts';
import { subframeMoved } from '#core/subframe.ts';
import { distance } from '#core/vector.ts';
import { anyCorner, anyUprightCorner, between } from './corner-arbitraries.ts';
import { expectClose } from './near.ts';

const anyShift = between(-0.025, 0.025);

describe('a subframe moved sideways', () => {
  // Toe takes part of the lean away from the camber, in the second order: a wheel without any shows the law bare.
  test('changes no included angle of a wheel without toe, however far', () => {
    fc.assert(
      fc.property(anyUprightCorner, anyShift, (corner, shift) => {
        const after = measure(subframeMoved(corner, shift));
        expectClose(after.includedAngle, measure(corner).includedAngle, 1e-12);
      }),
    );
  });

  test('changes no caster, since neither pivot moves along the car or up', () => {
    fc.assert(
      fc.property(anyCorner, anyShift, (corner, shift) => {
        expectClose(measure(subframeMoved(corner, shift)).caster, measure(corner).caster, 1e-12);
      }),
    );
  });

  test('keeps the carrier rigid and its rod’s outer end on it', () => {
    fc.assert(
      fc.property(anyCorner, anyShift, (corner, shift) => {
        const after = subframeMoved(corner, shift);
        const fromPivot = (one: typeof corner): number =>
          distance(one.wheelCentre, one.pivots.lower);
        expectClose(fromPivot(after), fromPivot(corner), 1e-12);
        const arm = (one: typeof corner): number => distance(one.tieRod.outer, one.wheelCentre);
        expectClose(arm(after), arm(corner), 1e-12);
      }),
    );
  });

  test('can be moved back', () => {
    fc.assert(
      fc.property(anyCorner, anyShift, (corner, shift) => {
        const back = subframeMoved(subframeMoved(corner, shift), -shift);
        expectClose(distance(back.wheelCentre, corner.wheelCentre), 0, 1e-12);
        expectClose(distance(back.spin, corner.spin), 0, 1e-12);
      }),
    );
  });
});
