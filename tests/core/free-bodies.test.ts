import { describe, expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { contactCentre } from '#core/corner.ts';
import { belowCentre, freeBodies, onCarrier } from '#core/free-bodies.ts';
import { NOTHING, vector } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectClose, expectNear } from './near.ts';

describe('a brake on the carrier', () => {
  const bodies = freeBodies(EXAMPLE, { kind: 'brake-on-carrier', force: 2000 });

  test('holds the wheel with force times radius, against the way it rolls', () => {
    // Rolling forward is right-handed about the line to the left.
    expectNear(bodies.pads?.couple ?? NOTHING, vector(0, -620, 0), 1e-9);
  });

  test('leaves the bearing a force and no couple', () => {
    expectNear(bodies.bearing.force, vector(2000, 0, 0), 1e-9);
    expectNear(bodies.bearing.couple, NOTHING, 1e-9);
  });

  test('hands the carrier the force at the wheel centre and the whole torque', () => {
    const { force, point, couple } = onCarrier(bodies);
    expectNear(force, vector(-2000, 0, 0), 1e-9);
    expect(point).toEqual(EXAMPLE.wheelCentre);
    expectNear(couple, vector(0, 620, 0), 1e-9);
  });
});

describe('a shaft in line with the spin axis', () => {
  test('keeps its torque to itself: the carrier feels a force alone', () => {
    const bodies = freeBodies(EXAMPLE, { kind: 'shaft', force: 1000 });
    expectNear(bodies.shaft?.couple ?? NOTHING, vector(0, 310, 0), 1e-9);
    expectNear(onCarrier(bodies).couple, NOTHING, 1e-9);
  });
});

describe('a shaft whose outer end stands higher', () => {
  test('turns a driven left wheel to the left by T·tan of half the angle', () => {
    const angle = Math.PI / 15;
    const shaftDirection = vector(0, Math.cos(angle), Math.sin(angle));
    const { couple } = onCarrier(
      freeBodies(EXAMPLE, { kind: 'shaft', force: 1000, shaftDirection }),
    );
    expectNear(couple, vector(0, 0, 310 * Math.tan(angle / 2)), 1e-9);
  });
});

describe('a blow', () => {
  test('goes straight through the bearing, whichever way it points', () => {
    const force = vector(-4000, 300, 1500);
    const bodies = freeBodies(EXAMPLE, { kind: 'impact', force });
    expect(bodies.pads).toBeUndefined();
    expect(bodies.shaft).toBeUndefined();
    expect(onCarrier(bodies)).toMatchObject({ force, couple: NOTHING });
  });
});

describe('the way down from the wheel centre', () => {
  test('ends at the contact centre', () => {
    expectNear(belowCentre(EXAMPLE, 0), EXAMPLE.wheelCentre);
    expectNear(belowCentre(EXAMPLE, 1), contactCentre(EXAMPLE));
    expectClose(belowCentre(EXAMPLE, 0.25).z, 0.2325);
  });
});

test('without a load there is no moment', () => {
  const bodies = freeBodies(EXAMPLE, { kind: 'brake-on-carrier', force: 0 });
  expectClose(momentOf(EXAMPLE, onCarrier(bodies)), 0);
});
