import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceToLine } from '#core/line.ts';
import { measure } from '#core/geometry.ts';
import { workshopAxis } from '#core/workshop-axis.ts';
import { anyAngle_deg, anyCorner, between } from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

describe('an axis from what a workshop measures', () => {
  test('measures just that', () => {
    fc.assert(
      fc.property(
        anyCorner,
        anyAngle_deg(-60, 60),
        anyAngle_deg(-60, 60),
        between(-0.2, 0.2),
        between(-0.2, 0.2),
        (wheel, inclination, caster, scrubRadius, trail) => {
          const axis = workshopAxis(wheel, { inclination, caster, scrubRadius, trail });
          const geometry = measure({ ...wheel, axis });
          expectClose(geometry.inclination, inclination);
          expectClose(geometry.caster, caster);
          expectClose(geometry.scrubRadius, scrubRadius);
          expectClose(geometry.trail, trail);
          expect(axis.direction.z).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('of a corner’s own measures is its axis again', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const axis = workshopAxis(corner, measure(corner));
        expectNear(axis.direction, corner.axis.direction);
        expect(distanceToLine(axis, corner.axis.point)).toBeLessThan(1e-12);
      }),
    );
  });
});
