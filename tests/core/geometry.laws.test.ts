import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Corner, TieRod } from '#core/corner.ts';
import { measure, type Geometry } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { rotation, turned } from '#core/rotation.ts';
import { steered } from '#core/steering.ts';
import { mirrored, plus, UP, type Vector } from '#core/vector.ts';
import {
  anyCorner,
  anyRotation,
  anyUprightCorner,
  anyVector,
  between,
} from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

describe('the geometry of a corner', () => {
  test('of an upright wheel ties the two offsets by q = r + R tan σ', () => {
    fc.assert(
      fc.property(anyUprightCorner, (corner) => {
        const { spindleOffset, scrubRadius, inclination } = measure(corner);
        expectClose(spindleOffset, scrubRadius + corner.loadedRadius * Math.tan(inclination));
      }),
    );
  });

  test('of an upright wheel ties the caster offsets by n_C = n − R tan τ', () => {
    fc.assert(
      fc.property(anyUprightCorner, (corner) => {
        const { casterOffsetAtCentre, trail, caster } = measure(corner);
        expectClose(casterOffsetAtCentre, trail - corner.loadedRadius * Math.tan(caster));
      }),
    );
  });

  test('of a wheel with camber has q = r + R (sin γ + cos γ tan σ) while it has no toe', () => {
    // Reimpell, Stoll and Betzler, The Automotive Chassis, 3.8 (from memory), for a thin disc.
    fc.assert(
      fc.property(anyUprightCorner, between(-0.1, 0.1), (upright, camber) => {
        const y = Math.sign(upright.spin.y) * Math.cos(camber);
        const corner = { ...upright, spin: { x: 0, y, z: -Math.sin(camber) } };
        const { spindleOffset, scrubRadius, inclination } = measure(corner);
        const lean = Math.sin(camber) + Math.cos(camber) * Math.tan(inclination);
        expectClose(spindleOffset, scrubRadius + corner.loadedRadius * lean);
      }),
    );
  });

  test('has a shortest distance to the axis no longer than any level one', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const { axisDistance, spindleOffset, casterOffsetAtCentre } = measure(corner);
        const level = Math.hypot(spindleOffset, casterOffsetAtCentre);
        expect(axisDistance).toBeLessThanOrEqual(level * (1 + 1e-12));
      }),
    );
  });

  test('is the same on the other side of the car', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const here = measure(corner);
        const there = measure(mirroredCorner(corner));
        expectSameMeasures(there, here);
        expectNear(there.groundPoint, mirrored(here.groundPoint));
        expectNear(there.contactCentre, mirrored(here.contactCentre));
      }),
    );
  });

  test('steered is the same on the other side, steered the other way', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, (corner, angle) => {
        const here = measure(steered(corner, angle));
        expectSameMeasures(measure(steered(mirroredCorner(corner), -angle)), here);
      }),
    );
  });

  test('does not depend on where the origin is', () => {
    fc.assert(
      fc.property(anyCorner, anyVector(3), (corner, shift) => {
        const here = measure(corner);
        const there = measure(
          moved(
            corner,
            (point) => plus(point, shift),
            (v) => v,
          ),
        );
        expectSameMeasures(there, here);
        expectNear(there.groundPoint, plus(here.groundPoint, shift));
      }),
    );
  });

  test('keeps its lengths and its camber however the car is turned on level ground', () => {
    fc.assert(
      fc.property(anyCorner, between(-1, 1), (corner, yaw) => {
        const by = rotation(UP, yaw);
        const turn = (v: Vector) => turned(v, by);
        const here = measure(corner);
        const there = measure(moved(corner, turn, turn));
        for (const key of [...LENGTHS, 'camber'] as const) expectClose(there[key], here[key]);
        expectNear(there.groundPoint, turn(here.groundPoint));
      }),
    );
  });
});

const LENGTHS = [
  'scrubRadius',
  'trail',
  'spindleOffset',
  'casterOffsetAtCentre',
  'axisDistance',
] as const;

function expectSameMeasures(actual: Geometry, expected: Geometry): void {
  for (const key of [...LENGTHS, 'inclination', 'caster', 'camber', 'includedAngle'] as const)
    expectClose(actual[key], expected[key]);
}

/** The corner with every point and every direction taken somewhere else. */
function moved(
  corner: Corner,
  point: (at: Vector) => Vector,
  arrow: (direction: Vector) => Vector,
): Corner {
  const { axis, tieRod } = corner;
  const movedRod = ({ outer, inner }: TieRod) => ({ outer: point(outer), inner: point(inner) });
  return {
    ...corner,
    axis: { point: point(axis.point), direction: arrow(axis.direction) },
    pivots: undefined,
    wheelCentre: point(corner.wheelCentre),
    spin: arrow(corner.spin),
    tieRod: tieRod && movedRod(tieRod),
  };
}
