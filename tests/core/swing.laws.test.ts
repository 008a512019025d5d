import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { outboardSign, spinAxis, type Corner } from '#core/corner.ts';
import type { Outcome } from '#core/fault.ts';
import { casterOf, inclinationOf } from '#core/geometry.ts';
import { lineThrough } from '#core/line.ts';
import { casterBySwing, inclinationBySwing, swingFactor } from '#core/swing-by-rule.ts';
import { readingAfter, swingReadings } from '#core/swing-readings.ts';
import { axisFromBrakedSwing, axisFromCamberSwing, type AxisAngles } from '#core/swing.ts';
import { mirrored, vector } from '#core/vector.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Corners drawn from ranges of their angles, in degrees. */
function cornersWithin(range: {
  readonly caster: readonly [number, number];
  readonly inclination: readonly [number, number];
  readonly camber: readonly [number, number];
  readonly toe: readonly [number, number];
}): fc.Arbitrary<Corner> {
  return fc
    .record({
      side: fc.constantFrom('left' as const, 'right' as const),
      caster: between(...range.caster).map(radians),
      inclination: between(...range.inclination).map(radians),
      camber: between(...range.camber).map(radians),
      toe: between(...range.toe).map(radians),
    })
    .map(({ side, caster, inclination, camber, toe }) => {
      const y = outboardSign(side);
      const upper = vector(
        0.01 - 0.4 * Math.tan(caster),
        (0.65 - 0.4 * Math.tan(inclination)) * y,
        0.6,
      );
      return {
        side,
        axis: lineThrough(vector(0.01, 0.65 * y, 0.2), upper),
        wheelCentre: vector(0, 0.72 * y, 0.3),
        spin: spinAxis(side, camber, toe),
        loadedRadius: 0.3,
      };
    });
}

/** Road cars and far beyond. */
const corners = cornersWithin({
  caster: [-15, 15],
  inclination: [-8, 20],
  camber: [-5, 5],
  toe: [-2, 2],
});

const roadCars = cornersWithin({
  caster: [-2, 8],
  inclination: [5, 15],
  camber: [-1.5, 1.5],
  toe: [-0.25, 0.25],
});

const valueOf = (outcome: Outcome<AxisAngles>): AxisAngles => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
};

const truth = ({ axis, side }: Corner): AxisAngles => ({
  caster: casterOf(axis),
  inclination: inclinationOf(axis, side),
});

describe('both swings recover the axis of any corner, left or right', () => {
  test('when the plates are turned by the same angle each way', () => {
    fc.assert(
      fc.property(corners, between(5, 40), (corner, turn) => {
        const swing = swingReadings(corner, radians(turn));
        for (const found of [axisFromCamberSwing(swing), axisFromBrakedSwing(swing)]) {
          const { caster, inclination } = valueOf(found);
          // Rounding of 1e-16 over (1 − cos 5°) sin 5° = 3e-4, with room.
          expect(Math.abs(caster - truth(corner).caster)).toBeLessThan(1e-10);
          expect(Math.abs(inclination - truth(corner).inclination)).toBeLessThan(1e-10);
        }
      }),
    );
  });

  test('and when they are turned by any three angles', () => {
    const three = fc.tuple(between(-40, -10), between(-5, 5), between(10, 40));
    fc.assert(
      fc.property(corners, three, (corner, [first, second, third]) => {
        const readings = [first, second, third].map((angle) =>
          readingAfter(corner, radians(angle)),
        );
        const sorted = readings.toSorted((a, b) => a.turn - b.turn);
        const [turnedIn, ahead, turnedOut] = sorted;
        if (!turnedIn || !ahead || !turnedOut) throw new Error('three readings');
        const swing = { turnedIn, ahead, turnedOut };
        for (const found of [axisFromCamberSwing(swing), axisFromBrakedSwing(swing)]) {
          const { caster, inclination } = valueOf(found);
          expect(Math.abs(caster - truth(corner).caster)).toBeLessThan(1e-10);
          expect(Math.abs(inclination - truth(corner).inclination)).toBeLessThan(1e-10);
        }
      }),
    );
  });
});

test('the zero of the pitch gauge does not matter', () => {
  fc.assert(
    fc.property(corners, between(-10, 10), (corner, zero) => {
      const { turnedIn, ahead, turnedOut } = swingReadings(corner, radians(20));
      const shifted = <R extends { readonly pitch: number }>(reading: R) => ({
        ...reading,
        pitch: reading.pitch + radians(zero),
      });
      const { caster, inclination } = valueOf(
        axisFromBrakedSwing({
          turnedIn: shifted(turnedIn),
          ahead: shifted(ahead),
          turnedOut: shifted(turnedOut),
        }),
      );
      expect(Math.abs(caster - truth(corner).caster)).toBeLessThan(1e-10);
      expect(Math.abs(inclination - truth(corner).inclination)).toBeLessThan(1e-10);
    }),
  );
});

test('a corner and its mirror image have the same readings', () => {
  fc.assert(
    fc.property(corners, (corner) => {
      const { axis, wheelCentre, spin } = corner;
      const image: Corner = {
        ...corner,
        side: corner.side === 'left' ? 'right' : 'left',
        axis: { point: mirrored(axis.point), direction: mirrored(axis.direction) },
        wheelCentre: mirrored(wheelCentre),
        spin: mirrored(spin),
      };
      const one = swingReadings(corner, radians(20));
      const other = swingReadings(image, radians(20));
      for (const position of ['turnedIn', 'ahead', 'turnedOut'] as const) {
        for (const angle of ['turn', 'camber', 'pitch'] as const) {
          expect(Math.abs(one[position][angle] - other[position][angle])).toBeLessThan(1e-12);
        }
      }
    }),
  );
});

test('for a road car the workshop formulas are off by less than 0.25° of caster and 0.6° of inclination', () => {
  fc.assert(
    fc.property(roadCars, (corner) => {
      const { turnedIn, turnedOut } = swingReadings(corner, radians(20));
      const factor = swingFactor(radians(20));
      const { caster, inclination } = truth(corner);
      const casterRead = casterBySwing(turnedOut.camber, turnedIn.camber, factor);
      const inclinationRead = inclinationBySwing(turnedOut.pitch, turnedIn.pitch, factor);
      expect(Math.abs(degrees(casterRead - caster))).toBeLessThan(0.25);
      expect(Math.abs(degrees(inclinationRead - inclination))).toBeLessThan(0.6);
    }),
    { numRuns: 300 },
  );
});
