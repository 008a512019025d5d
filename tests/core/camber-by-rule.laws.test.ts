import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { camberByRule, camberFromCaster, camberFromInclination } from '#core/camber-by-rule.ts';
import { outboardSign, spinAxis, type Corner } from '#core/corner.ts';
import { camberOf } from '#core/geometry.ts';
import { rotationForSteer, steered } from '#core/steering.ts';
import { direction, vector } from '#core/vector.ts';
import { anyAngle_deg } from './corner-arbitraries.ts';

const anyRoadCar = fc.record({
  side: fc.constantFrom('left' as const, 'right' as const),
  inclination: anyAngle_deg(5, 15),
  caster: anyAngle_deg(-2, 8),
  camber: anyAngle_deg(-1.5, 1.5),
});

test('for a road car the rule is within 0.3° of the rotation, up to 40° in or out', () => {
  fc.assert(
    fc.property(anyRoadCar, anyAngle_deg(-40, 40), ({ side, camber, ...axis }, turn) => {
      const inboard = outboardSign(side) * Math.tan(axis.inclination);
      const corner: Corner = {
        side,
        axis: {
          point: vector(0, 0.65 * outboardSign(side), 0.2),
          direction: direction(vector(-Math.tan(axis.caster), -inboard, 1)),
        },
        wheelCentre: vector(0, 0.72 * outboardSign(side), 0.3),
        spin: spinAxis(side, camber, 0),
        loadedRadius: 0.3,
      };
      const angle = rotationForSteer(corner, outboardSign(side) * turn);
      const exact = camberOf(steered(corner, angle).spin);
      expect(Math.abs(degrees(camberByRule(camber, axis, turn) - exact))).toBeLessThan(0.3);
    }),
    { numRuns: 500 },
  );
});

test('the inclination’s share is the same in and out, the caster’s the opposite', () => {
  fc.assert(
    fc.property(anyAngle_deg(-20, 20), anyAngle_deg(0, 40), (lean, turn) => {
      expect(camberFromInclination(lean, -turn)).toBe(camberFromInclination(lean, turn));
      expect(camberFromCaster(lean, -turn)).toBe(-camberFromCaster(lean, turn));
    }),
  );
});

test('straight ahead nothing is added', () => {
  const axis = { inclination: radians(12), caster: radians(4) };
  expect(camberByRule(radians(-1), axis, 0)).toBe(radians(-1));
});
