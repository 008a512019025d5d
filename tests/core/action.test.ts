import { describe, expect, test } from 'vitest';
import { momentOf, senseOf } from '#core/action.ts';
import { NOTHING, UP, vector } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';

describe('the sense of a moment', () => {
  test('to the left is toe-out on a left wheel and toe-in on a right one', () => {
    expect(senseOf('left', 12)).toBe('toe-out');
    expect(senseOf('right', 12)).toBe('toe-in');
    expect(senseOf('left', -12)).toBe('toe-in');
    expect(senseOf('right', -12)).toBe('toe-out');
  });

  test('is none below 1e-9 N·m', () => {
    expect(senseOf('left', 0)).toBe('none');
    expect(senseOf('left', -0.99e-9)).toBe('none');
    expect(senseOf('left', -1.01e-9)).toBe('toe-in');
    expect(senseOf('right', 1e-9)).toBe('toe-in');
  });
});

describe('the moment about the steering axis', () => {
  test('of a force through the axis is nothing', () => {
    const { lower, upper } = EXAMPLE.pivots;
    const force = vector(-3000, 800, 5000);
    for (const point of [lower, upper])
      expect(momentOf(EXAMPLE, { force, point, couple: NOTHING })).toBeCloseTo(0, 9);
  });

  test('of a force along the axis is nothing', () => {
    const { x, y, z } = EXAMPLE.axis.direction;
    const force = vector(5000 * x, 5000 * y, 5000 * z);
    const action = { force, point: EXAMPLE.wheelCentre, couple: NOTHING };
    expect(momentOf(EXAMPLE, action)).toBeCloseTo(0, 9);
  });

  test('of a couple is its part along the axis, wherever it enters', () => {
    const couple = vector(0, 0, 100);
    const near = momentOf(EXAMPLE, { force: NOTHING, point: NOTHING, couple });
    const far = momentOf(EXAMPLE, { force: NOTHING, point: UP, couple });
    expect(near).toBe(100 * EXAMPLE.axis.direction.z);
    expect(far).toBe(near);
  });
});
