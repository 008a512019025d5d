import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { momentOf } from '#core/action.ts';
import { contactCentre, spinAxis, type Corner } from '#core/corner.ts';
import { liftBetween, steered } from '#core/steering.ts';
import { rotation, turnedAbout } from '#core/rotation.ts';
import { actionOf } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { NOTHING, plus, times, UP, vector } from '#core/vector.ts';
import { workshopAxis } from '#core/workshop-axis.ts';
import { hingedCarrier } from '../references/mujoco.ts';

/**
 * Textbooks write the moments about the steering axis with one angle at a time. λ is the inclination, ν the
 * caster angle, d the scrub radius, r the wheel radius, δ the steer angle.
 */
interface TextbookAxis {
  readonly inclination_deg: number;
  readonly caster_deg: number;
  readonly scrubRadius: number;
  readonly trail: number;
}

const RADIUS = 0.3;

/** A left corner with an upright wheel and its contact centre at the origin. */
function textbookCorner({ inclination_deg, caster_deg, scrubRadius, trail }: TextbookAxis): Corner {
  const wheel = {
    side: 'left',
    wheelCentre: vector(0, 0, RADIUS),
    spin: spinAxis('left', 0, 0),
    loadedRadius: RADIUS,
  } as const;
  const angles = { inclination: radians(inclination_deg), caster: radians(caster_deg) };
  return { ...wheel, axis: workshopAxis(wheel, { ...angles, scrubRadius, trail }) };
}

/** Moment of a wheel load at the point of the carrier that touches the ground straight ahead. */
function momentAtFixedPoint(corner: Corner, load: number, steer: number): number {
  const { axis } = corner;
  const point = turnedAbout(contactCentre(corner), axis.point, rotation(axis.direction, steer));
  return momentOf(corner, { force: times(load, UP), point, couple: NOTHING });
}

describe('the jacking moment W d sin λ cos λ sin δ', () => {
  const source =
    'Barton and Fieldhouse, Automotive Chassis Engineering (2018), example E2.1, p. 82: 28 and 42 N·m';
  const inclination_deg = 12;
  const corner = textbookCorner({ inclination_deg, caster_deg: 0, scrubRadius: 0.025, trail: 0 });
  const load = 1200 * 9.81;
  // The engine's own figures, to half of their last digit.
  const rows = [
    { steer_deg: 28, printed: 28, engine: -28.098482, drop: 0.595119 },
    { steer_deg: 45, printed: 42, engine: -42.321258, drop: 1.48913 },
  ];

  test.each(rows)('at $steer_deg° is $printed N·m back to straight ahead', (row) => {
    const steer = radians(row.steer_deg);
    const moment = momentAtFixedPoint(corner, load, steer);
    expect(Math.abs(-moment - row.printed), source).toBeLessThanOrEqual(0.5);
    expect(Math.abs(moment - row.engine), 'MuJoCo 3.3.8').toBeLessThanOrEqual(5e-7);
    const { axis } = corner;
    const by = rotation(axis.direction, steer);
    const { z } = turnedAbout(contactCentre(corner), axis.point, by);
    expect(Math.abs(-1000 * z - row.drop), 'MuJoCo 3.3.8').toBeLessThanOrEqual(5e-7);
  });

  test('is what MuJoCo finds at that point of the carrier', async () => {
    const { point, direction } = corner.axis;
    const contact = contactCentre(corner);
    const carrier = await hingedCarrier(point, plus(point, direction), {
      contact: { at: contact },
    });
    for (const steer of [-45, -10, 5, 28].map(radians)) {
      carrier.turnTo(steer);
      const engine = carrier.moment(times(load, UP), carrier.place('contact'), NOTHING);
      expect(momentAtFixedPoint(corner, load, steer)).toBeCloseTo(engine, 10);
    }
  });

  test('has the spindle offset in place of d once the tyre rolls on to stand on its lowest point', () => {
    // Geometry: the lowest point of a disc is no fixed point of the carrier. For small angles the lift
    // of a disc on an axis without caster is (d + r tan λ) sin λ cos λ δ²/2.
    const steer = radians(1);
    const lift = liftBetween(corner, steered(corner, steer));
    const inclination = radians(inclination_deg);
    const arm = 0.025 + RADIUS * Math.tan(inclination);
    const expected = (arm * Math.sin(inclination) * Math.cos(inclination) * steer ** 2) / 2;
    // Left out: the fourth power of the steer angle, 1e-4 of the whole at 1°.
    expect(Math.abs(lift / expected - 1)).toBeLessThan(5e-4);
  });
});

describe('the moments of Gillespie, Fundamentals of Vehicle Dynamics (1992), chapter 8 (from memory)', () => {
  test('traction: F d, but for the cosine of the inclination', () => {
    const corner = textbookCorner({
      inclination_deg: 12,
      caster_deg: 0,
      scrubRadius: 0.04,
      trail: 0,
    });
    const moment = momentOf(corner, actionOf(corner, { kind: 'brake-on-carrier', force: 1000 }));
    // The textbook takes the lever level instead of at right angles to the axis: 1 − cos 12° = 2.2 %.
    expect(Math.abs(moment / (1000 * 0.04) - 1)).toBeLessThanOrEqual(0.022);
  });

  test('lateral force: F r tan ν, where the axis passes the wheel centre in side view', () => {
    const caster = radians(6);
    const trail = RADIUS * Math.tan(caster);
    const corner = textbookCorner({ inclination_deg: 0, caster_deg: 6, scrubRadius: 0, trail });
    const load = { kind: 'lateral', force: 2000, pneumaticTrail: 0 } as const;
    const moment = momentOf(corner, actionOf(corner, load));
    // To the left behind the axis: it turns the wheel to the right. 1 − cos 6° = 0.55 %.
    expect(Math.abs(-moment / (2000 * trail) - 1)).toBeLessThanOrEqual(0.0055);
  });

  test('caster part of the wheel load: F d sin ν cos δ, opposite on the two sides', () => {
    const caster_deg = 6;
    const left = textbookCorner({ inclination_deg: 0, caster_deg, scrubRadius: 0.04, trail: 0 });
    const right = mirroredCorner(left);
    const steer = radians(15);
    const expected = 4000 * 0.04 * Math.sin(radians(caster_deg)) * Math.cos(steer);
    expect(-momentAtFixedPoint(left, 4000, steer)).toBeCloseTo(expected, 9);
    expect(momentAtFixedPoint(right, 4000, steer)).toBeCloseTo(expected, 9);
  });
});
