import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { measure } from '#core/geometry.ts';
import { rotationForSteer, steered } from '#core/steering.ts';
import { COORDINATES } from '#scenes/corner/coordinates.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { expectNear } from '../../core/near.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';

const at = (changes: Partial<Setting>, name = 'siskin, left') =>
  standing(modelNamed(name), adjusted(AS_IT_STANDS, changes));

describe.each(MODEL_NAMES)('the %s corner', (name) => {
  const { corner } = modelNamed(name);

  test('stands as its car does where nothing is set', () => {
    expect(at({}, name).geometry).toEqual(measure(corner));
    expect(at({}, name).corner.wheelCentre).toEqual(corner.wheelCentre);
  });

  test('is steered to the angle that is asked for', () => {
    for (const steer of [-40, -7.5, 20]) {
      const now = at({ steer }, name);
      expect(degrees(valueOf('steer', now))).toBeCloseTo(steer, 9);
      const expected = steered(corner, rotationForSteer(corner, radians(steer)));
      expectNear(now.corner.wheelCentre, expected.wheelCentre, 1e-9);
    }
  });

  test('has its pivots moved outboard, inboard, forward and rearward on its own side', () => {
    const { lower, upper } = at(
      { lowerOutboard: 10, lowerForward: 5, upperInboard: 20, upperRearward: -7 },
      name,
    ).corner.pivots;
    const out = name.endsWith('left') ? 1 : -1;
    expect(lower.y - corner.pivots.lower.y).toBeCloseTo(0.01 * out, 12);
    expect(lower.x - corner.pivots.lower.x).toBeCloseTo(0.005, 12);
    expect(upper.y - corner.pivots.upper.y).toBeCloseTo(-0.02 * out, 12);
    expect(upper.x - corner.pivots.upper.x).toBeCloseTo(0.007, 12);
  });
});

test('moved pivots leave the wheel where it is', () => {
  const { wheelCentre, spin } = at({ lowerOutboard: 20, upperRearward: 30 }).corner;
  expect({ wheelCentre, spin }).toEqual({
    wheelCentre: modelNamed('siskin, left').corner.wheelCentre,
    spin: modelNamed('siskin, left').corner.spin,
  });
});

test('a spacer and less inset carry the wheel out alike; the hub stays', () => {
  const [spaced, otherWheel] = [at({ spacer: 15 }), at({ inset: -15 })];
  expect(spaced.geometry).toEqual(otherWheel.geometry);
  expect(spaced.wheelShift).toBeCloseTo(0.015, 12);
});

describe('a load', () => {
  test('makes a moment of its own and leaves the others at nought', () => {
    const now = at({ brake: 2000 });
    expect(Math.abs(valueOf('brakeMoment', now))).toBeGreaterThan(5);
    for (const id of ['driveMoment', 'sideMoment', 'weightMoment'] as const) {
      expect(valueOf(id, now)).toBe(0);
    }
  });

  test('loads the tie rod, the rack and the hands', () => {
    const now = at({ brake: 2000 });
    for (const id of ['rodForce', 'rackForce', 'handwheelTorque'] as const) {
      expect(Math.abs(valueOf(id, now)), id).toBeGreaterThan(0.05);
      expect(Math.abs(valueOf(id, at({}))), id).toBe(0);
    }
  });

  test('turns left and right wheels opposite ways', () => {
    const [left, right] = ['siskin, left', 'siskin, right'].map((name) =>
      valueOf('brakeMoment', at({ brake: 2000 }, name)),
    );
    expect(left).toBeCloseTo(-(right ?? NaN), 9);
  });
});

describe('the coordinates that lessons speak of', () => {
  const now = at({});

  test('are heights above the road and distances from the middle, alike on both sides', () => {
    expect(COORDINATES.lowerHeight(now)).toBeCloseTo(0.175, 3);
    expect(COORDINATES.upperHeight(now)).toBeCloseTo(0.455, 3);
    expect(COORDINATES.lowerOut(now)).toBeCloseTo(0.73, 9);
    expect(COORDINATES.contactOut(now)).toBeGreaterThan(COORDINATES.groundPointOut(now));
    for (const coordinate of Object.values(COORDINATES)) {
      expect(coordinate(at({}, 'siskin, right'))).toBeCloseTo(coordinate(now), 9);
    }
  });

  test('say where the pivots are along the car from the wheel centre, ahead being positive', () => {
    expect(COORDINATES.lowerAhead(now)).toBeCloseTo(0.012, 9);
    expect(COORDINATES.upperAhead(now)).toBeCloseTo(-0.019, 9);
    expect(COORDINATES.pivotsApartAlong(now)).toBeCloseTo(0.031, 9);
  });

  test('lead to both angles by division', () => {
    const { inclination, caster } = now.geometry;
    const { pivotsApartAcross, pivotsApartAlong, pivotsApartUp } = COORDINATES;
    expect(pivotsApartAcross(now) / pivotsApartUp(now)).toBeCloseTo(Math.tan(inclination), 12);
    expect(pivotsApartAlong(now) / pivotsApartUp(now)).toBeCloseTo(Math.tan(caster), 12);
  });

  test('lead from the road to the hub: R tan σ for an upright wheel', () => {
    const upright = at({}, 'pelican, left');
    const { loadedRadius } = upright.corner;
    const lean = loadedRadius * Math.tan(upright.geometry.inclination);
    expect(COORDINATES.leanToCentre(upright)).toBeCloseTo(lean, 4);
  });
});
