import { describe, expect, test } from 'vitest';
import { atHeight, distanceToLine, lineThrough, momentAbout } from '#core/line.ts';
import { along, cross, direction, FORWARD, mirrored, triple, UP, vector } from '#core/vector.ts';
import { expectNear } from './near.ts';

describe('vectors', () => {
  test('up across forward is left', () => {
    expect(cross(UP, FORWARD)).toEqual(vector(0, 1, 0));
  });

  test('going along a vector adds a multiple of it', () => {
    expect(along(vector(1, 2, 3), 2, vector(0, -1, 0.5))).toEqual(vector(1, 0, 4));
  });

  test('a direction has length 1', () => {
    expectNear(direction(vector(0, 3, -4)), vector(0, 0.6, -0.8), 1e-15);
  });

  test('a vector without length has no direction', () => {
    expect(() => direction(vector(0, 0, 0))).toThrow(RangeError);
    expect(() => direction(vector(1e-13, 0, 0))).toThrow(RangeError);
    expect(() => direction(vector(NaN, 0, 0))).toThrow(RangeError);
  });

  test('the triple product is the volume of the box on three edges', () => {
    expect(triple(vector(2, 0, 0), vector(1, 3, 0), vector(5, 7, 4))).toBe(24);
    expect(triple(vector(1, 3, 0), vector(2, 0, 0), vector(5, 7, 4))).toBe(-24);
  });

  test('the mirror image changes sides', () => {
    expect(mirrored(vector(1, 2, 3))).toEqual(vector(1, -2, 3));
  });
});

describe('lines', () => {
  const leaning = lineThrough(vector(0, 1, 0), vector(0, 0, 1));

  test('two points that coincide make no line', () => {
    expect(() => lineThrough(UP, UP)).toThrow(RangeError);
  });

  test('a line is met at a height', () => {
    const { x, y, z } = atHeight(leaning, 0.25);
    expect([x, y, z]).toEqual([0, expect.closeTo(0.75, 15), expect.closeTo(0.25, 15)]);
  });

  test('the distance to a line is perpendicular', () => {
    expect(distanceToLine(leaning, vector(0, 0, 0))).toBeCloseTo(Math.SQRT1_2, 15);
  });

  test('a force turns right-handed about a line, by the gap between the two', () => {
    const upright = lineThrough(vector(0, 0, 0), UP);
    expect(momentAbout(upright, vector(2, 0, 5), vector(0, 3, 7))).toBe(6);
    expect(momentAbout(upright, vector(2, 0, 5), vector(3, 0, 7))).toBe(0);
  });
});
