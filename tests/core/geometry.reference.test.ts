import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { measure } from '#core/geometry.ts';
import { liftBetween, steerBetween, steered } from '#core/steering.ts';
import { radians } from '#core/angle.ts';
import { EXAMPLE } from './example-corner.ts';

/** Rows are in millimetres and degrees, right to half of their last digit. */
const ROWS = [
  {
    source: 'worked by hand: the axis falls 550 mm while it goes 60 mm out and 30 mm forward',
    got: () => {
      const { groundPoint, scrubRadius, trail, spindleOffset, casterOffsetAtCentre } =
        measure(EXAMPLE);
      return [
        groundPoint.x,
        groundPoint.y,
        scrubRadius,
        trail,
        spindleOffset,
        casterOffsetAtCentre,
      ].map((metres) => 1000 * metres);
    },
    expected: [120 / 11, 620 + 240 / 11, 80 - 240 / 11, 120 / 11, 92, -6],
    within: 1e-9,
  },
  {
    source: 'worked by hand: atan(60/550), atan(30/550)',
    got: () => {
      const { inclination, caster, includedAngle } = measure(EXAMPLE);
      return [inclination, caster, includedAngle].map(degrees);
    },
    expected: [6.2258291, 3.1221305, 6.2258291],
    within: 5e-8,
  },
  {
    source: 'MuJoCo 3.3.8, three.js, cannon-es and mathjs (matrix exponential), which agreed',
    got: () => [1000 * measure(EXAMPLE).axisDistance],
    expected: [91.6197],
    within: 5e-5,
  },
] as const;

describe('the example corner measures', () => {
  test.each(ROWS)('$expected ($source)', ({ got, expected, within }) => {
    const values = got();
    expected.forEach((value, index) => {
      expect(Math.abs((values[index] ?? NaN) - value)).toBeLessThanOrEqual(within);
    });
  });
});

describe('the example corner, steered', () => {
  const source = 'MuJoCo 3.3.8, three.js, cannon-es and mathjs (matrix exponential), which agreed';
  // Tolerance: half of the last printed digit.
  const rows = [
    { rotation: -20, camber: -0.68962, steer: -19.86971, centre: 310.8656, tread: 0.8881 },
    { rotation: 20, camber: 1.4326, steer: 19.83159, centre: 307.9027, tread: -2.0004 },
  ];

  test.each(rows)('by $rotation° is where four engines turn it', (row) => {
    const now = steered(EXAMPLE, radians(row.rotation));
    const within = (value: number, expected: number, half: number) => {
      expect(Math.abs(value - expected), source).toBeLessThanOrEqual(half);
    };
    within(degrees(measure(now).camber), row.camber, 5e-6);
    within(degrees(steerBetween(EXAMPLE, now)), row.steer, 5e-6);
    within(1000 * now.wheelCentre.z, row.centre, 5e-5);
    within(-1000 * liftBetween(EXAMPLE, now), row.tread, 5e-5);
  });

  test('shows its caster by the camber gained over a swing, as in the workshop', () => {
    const camberAt = (rotation_deg: number) =>
      degrees(measure(steered(EXAMPLE, radians(rotation_deg))).camber);
    const swing = (camberAt(20) - camberAt(-20)) / (2 * Math.sin(radians(20)));
    // January, SAE 850219 (method; formula from memory). The method leaves out second powers of the
    // inclination: 0.02° here.
    expect(Math.abs(swing - degrees(measure(EXAMPLE).caster))).toBeLessThan(0.025);
  });
});
