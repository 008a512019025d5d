import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measure } from '#core/geometry.ts';
import { distanceToLine } from '#core/line.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { liftBetween, rotationForSteer, steerBetween, steered } from '#core/steering.ts';
import { distance, dot, length } from '#core/vector.ts';
import { anyCorner, anyRotation, anyUprightCorner, between } from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

describe('steering a carrier', () => {
  test('keeps it rigid and at its distance from the axis', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const now = steered(corner, angle);
        const outer = now.tieRod?.outer ?? corner.tieRod.outer;
        expectClose(length(now.spin), 1, 1e-14);
        expectClose(dot(now.spin, now.axis.direction), dot(corner.spin, corner.axis.direction));
        expectClose(
          distanceToLine(now.axis, now.wheelCentre),
          distanceToLine(corner.axis, corner.wheelCentre),
        );
        expectClose(
          distance(now.wheelCentre, outer),
          distance(corner.wheelCentre, corner.tieRod.outer),
        );
      }),
    );
  });

  test('leaves the body where it is', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const now = steered(corner, angle);
        expect(now.axis).toBe(corner.axis);
        expect(now.pivots).toBe(corner.pivots);
        expect(now.tieRod?.inner).toBe(corner.tieRod.inner);
      }),
    );
  });

  test('twice is once by the sum, and back is nowhere', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, anyRotation, (corner, first, second) => {
        const twice = steered(steered(corner, first), second);
        const once = steered(corner, first + second);
        expectNear(twice.wheelCentre, once.wheelCentre);
        expectNear(twice.spin, once.spin);
        expectNear(steered(steered(corner, first), -first).wheelCentre, corner.wheelCentre);
      }),
    );
  });

  test('turns the heading to the side of the rotation, by nearly as much', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const steer = steerBetween(corner, steered(corner, angle));
        expect(Math.abs(steer - angle)).toBeLessThan(0.15 * Math.abs(angle) + 1e-12);
      }),
    );
  });

  test('can be asked for by the steer wanted', () => {
    fc.assert(
      fc.property(anyCorner, between(-0.9, 0.9), (corner, steer) => {
        const now = steered(corner, rotationForSteer(corner, steer));
        expectClose(steerBetween(corner, now), steer, 1e-12);
      }),
    );
  });

  test('steers the other side’s wheel alike, the other way', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const other = mirroredCorner(corner);
        const there = steered(other, -angle);
        const here = steered(corner, angle);
        expectClose(steerBetween(other, there), -steerBetween(corner, here), 1e-12);
        expectClose(liftBetween(other, there), liftBetween(corner, here), 1e-12);
      }),
    );
  });

  test('without caster lifts the car by q sin σ cos σ (1 − cos θ) − R (1 − cos γ)', () => {
    fc.assert(
      fc.property(anyUprightCorner, anyRotation, (any, angle) => {
        const { y, z } = any.axis.direction;
        const size = Math.hypot(y, z);
        const axis = { ...any.axis, direction: { x: 0, y: y / size, z: z / size } };
        const point = { ...axis.point, x: any.wheelCentre.x };
        const corner = { ...any, axis: { ...axis, point } };
        const { spindleOffset, inclination } = measure(corner);
        const now = steered(corner, angle);
        const { camber } = measure(now);
        expectClose(
          liftBetween(corner, now),
          spindleOffset * Math.sin(inclination) * Math.cos(inclination) * (1 - Math.cos(angle)) -
            corner.loadedRadius * (1 - Math.cos(camber)),
          1e-13,
        );
      }),
    );
  });
});

describe('a steer that cannot be', () => {
  test('is outside ±80°', () => {
    fc.assert(
      fc.property(anyCorner, between(1.4, 3), (corner, steer) => {
        expect(() => rotationForSteer(corner, steer)).toThrow(RangeError);
        expect(() => rotationForSteer(corner, -steer)).toThrow(RangeError);
      }),
    );
  });
});
