import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { measure } from '#core/geometry.ts';
import { lineThrough } from '#core/line.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { subframeMoved } from '#core/subframe.ts';
import { mirrored, vector } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectNear } from './near.ts';

const { lower, upper } = EXAMPLE.pivots;

/** The example’s other side. */
const RIGHT = {
  ...mirroredCorner(EXAMPLE),
  pivots: { lower: mirrored(lower), upper: mirrored(upper) },
};

describe('a subframe moved to the left', () => {
  const [left, right] = [subframeMoved(EXAMPLE, 0.012), subframeMoved(RIGHT, 0.012)];

  test('leans the left axis more inboard and the right one less', () => {
    const before = measure(EXAMPLE).inclination;
    expect(measure(left).inclination).toBeGreaterThan(before);
    expect(measure(right).inclination).toBeLessThan(before);
  });

  test('leans the top of the left wheel inboard and that of the right one outboard', () => {
    expect(measure(left).camber).toBeLessThan(0);
    expect(measure(right).camber).toBeGreaterThan(0);
  });

  test('leaves the upper pivots where they are, and takes the rack along', () => {
    expect(left.pivots.upper).toEqual(upper);
    expect(left.tieRod?.inner.y).toBeCloseTo((EXAMPLE.tieRod?.inner.y ?? NaN) + 0.012, 12);
  });

  test('by nothing leaves everything as it is', () => {
    expect(subframeMoved(EXAMPLE, 0)).toBe(EXAMPLE);
  });

  test('is on the right what a subframe moved to the right is on the left, mirrored', () => {
    const image = mirroredCorner(subframeMoved(EXAMPLE, -0.012));
    expectNear(right.wheelCentre, image.wheelCentre);
    expectNear(right.spin, image.spin);
  });
});

test('12 mm over 630 mm of height between the pivots is worth about a degree of camber', () => {
  // By hand: 12/630 rad is 1.09°, and with an inclination of 13° cos² 13° of that: 1.04°.
  const pivots = { lower, upper: vector(lower.x, lower.y - 0.1455, lower.z + 0.63) };
  const tall = { ...EXAMPLE, pivots, axis: lineThrough(lower, pivots.upper) };
  const gained = measure(subframeMoved(tall, 0.012)).camber - measure(tall).camber;
  expect(Math.abs(degrees(gained) + 1.04)).toBeLessThan(0.01);
});
