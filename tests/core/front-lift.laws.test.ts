import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frontLift } from '#core/front-lift.ts';
import { measure } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { liftBetween, rotationForSteer, steered } from '#core/steering.ts';
import { anyAngle_deg, anyCorner, anyUprightCorner } from './corner-arbitraries.ts';
import { expectClose } from './near.ts';

test('is the mean of both corners’ lifts when both are steered to the same side', () => {
  fc.assert(
    fc.property(anyCorner, anyAngle_deg(-40, 40), (corner, steer) => {
      const [here, there] = [corner, mirroredCorner(corner)].map((one) =>
        liftBetween(one, steered(one, rotationForSteer(one, steer))),
      );
      expectClose(frontLift(corner, steer), ((here ?? NaN) + (there ?? NaN)) / 2, 1e-12);
    }),
  );
});

test('is the same to the left and to the right, and none straight ahead', () => {
  fc.assert(
    fc.property(anyCorner, anyAngle_deg(0, 40), (corner, steer) => {
      expectClose(frontLift(corner, steer), frontLift(corner, -steer), 1e-14);
      expect(frontLift(corner, 0)).toBe(0);
    }),
  );
});

test('starts as (q tan σ − n tan τ)(1 − cos δ) for an upright wheel, but for third powers of the lean', () => {
  fc.assert(
    fc.property(anyUprightCorner, (corner) => {
      const { spindleOffset, inclination, trail, caster } = measure(corner);
      const [across, along] = [Math.tan(inclination), Math.tan(caster)];
      const steer = 0.02;
      const lever = frontLift(corner, steer) / (1 - Math.cos(steer));
      const left = Math.abs(lever - (spindleOffset * across - trail * along));
      const lengths = Math.abs(spindleOffset) + Math.abs(trail) + corner.loadedRadius;
      expect(left).toBeLessThan(0.25 * lengths * Math.hypot(across, along) ** 3 + 1e-9);
    }),
  );
});
