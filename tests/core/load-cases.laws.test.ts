import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentOf, senseOf } from '#core/action.ts';
import { contactCentre, heading, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { actionOf, type LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { rotation, turnedAbout } from '#core/rotation.ts';
import { liftBetween, steered } from '#core/steering.ts';
import { cross, dot, minus, mirrored, NOTHING, plus, times } from '#core/vector.ts';
import {
  anyCorner,
  anyLoadedCorner,
  anyRotation,
  anyVector,
  between,
} from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

const momentOfLoad = (corner: Corner, load: LoadCase): number =>
  momentOf(corner, actionOf(corner, load));

describe('the lever of a fore-and-aft force', () => {
  test('is r·u_z at the ground, steered or not', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, between(-8000, 8000), (any, angle, force) => {
        const corner = steered(any, angle);
        const outward = corner.side === 'left' ? 1 : -1;
        expectClose(
          momentOfLoad(corner, { kind: 'brake-on-carrier', force }),
          outward * force * measure(corner).scrubRadius * corner.axis.direction.z,
        );
      }),
    );
  });

  test('is q·u_z at the wheel centre, steered or not', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, between(-8000, 8000), (any, angle, force) => {
        const corner = steered(any, angle);
        const outward = corner.side === 'left' ? 1 : -1;
        expectClose(
          momentOfLoad(corner, { kind: 'shaft', force }),
          -outward * force * measure(corner).spindleOffset * corner.axis.direction.z,
        );
      }),
    );
  });
});

describe('moments', () => {
  test('on the other side of the car are the same the other way round', () => {
    fc.assert(
      fc.property(anyLoadedCorner, anyRotation, ([corner, load], angle) => {
        const here = steered(corner, angle);
        const there = steered(mirroredCorner(corner), -angle);
        const moment = momentOfLoad(here, load);
        const other = momentOfLoad(there, mirroredLoad(load));
        expectClose(other, -moment);
        fc.pre(Math.abs(moment) > 1e-6);
        expect(senseOf(there.side, other)).toBe(senseOf(here.side, moment));
      }),
    );
  });

  test('grow in proportion with the force', () => {
    fc.assert(
      fc.property(anyLoadedCorner, between(-3, 3), ([corner, load], factor) => {
        const larger = momentOfLoad(corner, scaled(load, factor));
        expectClose(larger, factor * momentOfLoad(corner, load));
      }),
    );
  });

  test('of two forces at one point are that of their sum', () => {
    fc.assert(
      fc.property(
        anyCorner,
        anyVector(6000),
        anyVector(6000),
        anyVector(1),
        (corner, first, second, point) => {
          const moment = (force: typeof first) =>
            momentOf(corner, { force, point, couple: NOTHING });
          expectClose(moment(plus(first, second)), moment(first) + moment(second));
        },
      ),
    );
  });

  test('of a force do not change while it slides along its own line', () => {
    fc.assert(
      fc.property(
        anyCorner,
        anyVector(6000),
        anyVector(1),
        between(-1e-4, 1e-4),
        (corner, force, point, way) => {
          const moment = (at: typeof point) =>
            momentOf(corner, { force, point: at, couple: NOTHING });
          expectClose(moment(plus(point, times(way, force))), moment(point));
        },
      ),
    );
  });

  test('of a force at the wheel centre with its couple are that of the same force at the ground', () => {
    fc.assert(
      fc.property(anyCorner, between(-8000, 8000), (corner, size) => {
        const force = times(-size, heading(corner));
        const arm = minus(contactCentre(corner), corner.wheelCentre);
        const atCentre = { force, point: corner.wheelCentre, couple: cross(arm, force) };
        const brake = momentOfLoad(corner, { kind: 'brake-on-carrier', force: size });
        expectClose(momentOf(corner, atCentre), brake);
      }),
    );
  });
});

describe('a shaft', () => {
  test('along the spin axis acts as if no direction had been given', () => {
    fc.assert(
      fc.property(anyCorner, between(-8000, 8000), (corner, force) => {
        const inLine = { kind: 'shaft', force, shaftDirection: corner.spin } as const;
        expectClose(momentOfLoad(corner, inLine), momentOfLoad(corner, { kind: 'shaft', force }));
      }),
    );
  });

  test('at any angle gives the wheel the torque that the ground takes', () => {
    fc.assert(
      fc.property(anyLoadedCorner, ([corner, load]) => {
        fc.pre(load.kind === 'shaft');
        const { force, point, couple } = actionOf(corner, load);
        const ofGround = cross(minus(point, corner.wheelCentre), force);
        expectClose(dot(corner.spin, plus(couple, ofGround)), 0);
      }),
    );
  });
});

describe('work', () => {
  test('of a force at a point of the carrier is its moment times the angle turned', () => {
    fc.assert(
      fc.property(anyCorner, anyVector(6000), anyVector(1), (corner, force, point) => {
        const step = 1e-5;
        const at = (angle: number) =>
          turnedAbout(point, corner.axis.point, rotation(corner.axis.direction, angle));
        const work = dot(force, minus(at(step), at(-step)));
        expectClose(work / (2 * step), momentOf(corner, { force, point, couple: NOTHING }), 1e-7);
      }),
    );
  });

  test('of the wheel load against the moment is load times lift, although the contact wanders', () => {
    fc.assert(
      fc.property(anyCorner, anyRotation, between(500, 9000), (corner, angle, force) => {
        const moment = (at: number) =>
          momentOfLoad(steered(corner, at), { kind: 'vertical', force });
        const lift = liftBetween(corner, steered(corner, angle));
        expectClose(integral(moment, angle), -force * lift, 1e-6);
      }),
    );
  });
});

describe('actions', () => {
  test('in the mirror are mirrored forces', () => {
    fc.assert(
      fc.property(anyLoadedCorner, ([corner, load]) => {
        const here = actionOf(corner, load);
        const there = actionOf(mirroredCorner(corner), mirroredLoad(load));
        expectNear(there.force, mirrored(here.force), 1e-9);
        expectNear(there.point, mirrored(here.point), 1e-12);
        // A couple is an axial vector: its mirror image turns the other way round as well.
        expectNear(there.couple, times(-1, mirrored(here.couple)), 1e-9);
      }),
    );
  });

  test('do not depend on where the axis is', () => {
    fc.assert(
      fc.property(anyLoadedCorner, anyCorner, ([corner, load], { axis }) => {
        expect(actionOf({ ...corner, axis }, load)).toEqual(actionOf(corner, load));
      }),
    );
  });
});

/** The load that stands in the mirror beside the mirrored corner. */
function mirroredLoad(load: LoadCase): LoadCase {
  switch (load.kind) {
    case 'shaft':
      return { ...load, shaftDirection: load.shaftDirection && mirrored(load.shaftDirection) };
    case 'impact':
      return { ...load, force: mirrored(load.force) };
    case 'lateral':
      return { ...load, force: -load.force };
    case 'brake-on-carrier':
    case 'vertical':
      return load;
  }
}

const scaled = (load: LoadCase, factor: number): LoadCase =>
  load.kind === 'impact'
    ? { ...load, force: times(factor, load.force) }
    : { ...load, force: factor * load.force };

/** From 0 to `end`, by Simpson's rule in 40 steps: good to nine digits for curves as tame as these. */
function integral(f: (x: number) => number, end: number): number {
  const steps = 40;
  const width = end / steps;
  let sum = f(0) + f(end);
  for (let step = 1; step < steps; step++) sum += (step % 2 === 1 ? 4 : 2) * f(step * width);
  return (sum * width) / 3;
}
