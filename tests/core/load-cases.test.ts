import { describe, expect, test } from 'vitest';
import { momentOf, senseOf } from '#core/action.ts';
import { contactCentre } from '#core/corner.ts';
import { actionOf } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { NOTHING, vector } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectNear } from './near.ts';

const right = mirroredCorner(EXAMPLE);

describe('where a load reaches the carrier', () => {
  test('a brake on the carrier pushes backward at the ground', () => {
    const { force, point, couple } = actionOf(EXAMPLE, { kind: 'brake-on-carrier', force: 2500 });
    expectNear(force, vector(-2500, 0, 0), 1e-9);
    expectNear(point, contactCentre(EXAMPLE));
    expect(couple).toBe(NOTHING);
  });

  test('a shaft in line pushes forward at the wheel centre', () => {
    const { force, point, couple } = actionOf(EXAMPLE, { kind: 'shaft', force: 1800 });
    expectNear(force, vector(1800, 0, 0), 1e-9);
    expect(point).toBe(EXAMPLE.wheelCentre);
    expect(couple).toBe(NOTHING);
  });

  test('a shaft at an angle hands over a couple beside the force at the ground', () => {
    const shaftDirection = vector(0, 1, -0.2);
    const { point, couple } = actionOf(EXAMPLE, { kind: 'shaft', force: 1000, shaftDirection });
    expectNear(point, contactCentre(EXAMPLE));
    // The ground pushes the tread forward; the shaft's torque holds against it about the spin axis.
    expect(couple.y).toBeCloseTo(1000 * EXAMPLE.loadedRadius, 9);
  });

  test('an edge pushes at the wheel centre, in whatever direction', () => {
    const force = vector(-4000, 300, 1500);
    const action = actionOf(EXAMPLE, { kind: 'impact', force });
    expect(action).toEqual({ force, point: EXAMPLE.wheelCentre, couple: NOTHING });
  });

  test('a lateral force pushes to the car’s left on both sides, behind the contact centre', () => {
    for (const corner of [EXAMPLE, right]) {
      const { force, point } = actionOf(corner, {
        kind: 'lateral',
        force: 2200,
        pneumaticTrail: 0.025,
      });
      const { x, y, z } = contactCentre(corner);
      expectNear(force, vector(0, 2200, 0), 1e-9);
      expectNear(point, vector(x - 0.025, y, z));
    }
  });

  test('the wheel load pushes upward at the contact centre', () => {
    const { force, point } = actionOf(right, { kind: 'vertical', force: 3900 });
    expect(force).toEqual(vector(0, 0, 3900));
    expectNear(point, contactCentre(right));
  });
});

describe('with the axis inboard of the wheel', () => {
  const sense = (corner: typeof right, force: number, kind: 'brake-on-carrier' | 'shaft') =>
    senseOf(corner.side, momentOf(corner, actionOf(corner, { kind, force })));

  test('braking turns both wheels to toe-out and driving to toe-in', () => {
    for (const corner of [EXAMPLE, right]) {
      expect(sense(corner, 1000, 'brake-on-carrier')).toBe('toe-out');
      expect(sense(corner, 1000, 'shaft')).toBe('toe-in');
      expect(sense(corner, -1000, 'shaft')).toBe('toe-out');
    }
  });
});

describe('a shaft that points inboard', () => {
  test('is a mistake in the program', () => {
    const inboard = vector(0, -1, 0);
    expect(() => actionOf(EXAMPLE, { kind: 'shaft', force: 1, shaftDirection: inboard })).toThrow(
      RangeError,
    );
    const outboardOnTheLeft = vector(0.1, 1, 0.1);
    expect(() =>
      actionOf(right, { kind: 'shaft', force: 1, shaftDirection: outboardOnTheLeft }),
    ).toThrow(RangeError);
    expect(() => actionOf(EXAMPLE, { kind: 'shaft', force: 1, shaftDirection: NOTHING })).toThrow(
      RangeError,
    );
  });
});
