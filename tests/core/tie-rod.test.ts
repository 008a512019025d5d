import { describe, expect, test } from 'vitest';
import { faultsOf } from '#core/fault.ts';
import { lineThrough } from '#core/line.ts';
import { rackForce, rodForce, rodLength, rodLever } from '#core/tie-rod.ts';
import { UP, vector } from '#core/vector.ts';
import { valueOf } from './example-corner.ts';

/** An upright axis at the origin, with a rod 0.1 m behind it that points straight inboard. */
const axis = lineThrough(vector(0, 0, 0), UP);
const rod = { outer: vector(-0.1, 0, 0), inner: vector(-0.1, -0.3, 0) };

describe('a tie rod behind the axis of a left wheel', () => {
  test('holds a moment to the left with its length in compression', () => {
    expect(rodLever(axis, rod)).toBeCloseTo(0.1, 15);
    expect(valueOf(rodForce(axis, rod, 50))).toBeCloseTo(-500, 9);
  });

  test('in compression pushes the rack inboard, to the right', () => {
    expect(rackForce(rod, -500)).toBe(-500);
  });

  test('ahead of the axis it is in tension and pulls the rack to the left', () => {
    const ahead = { outer: vector(0.1, 0, 0), inner: vector(0.1, -0.3, 0) };
    const force = valueOf(rodForce(axis, ahead, 50));
    expect(force).toBeCloseTo(500, 9);
    expect(rackForce(ahead, force)).toBeCloseTo(500, 9);
  });

  test('at an angle to the rack hands it only a part of its force', () => {
    const leaning = { outer: vector(-0.1, 0, 0), inner: vector(-0.1, -0.4, 0.3) };
    expect(rodLength(leaning)).toBeCloseTo(0.5, 15);
    expect(rackForce(leaning, 1000)).toBeCloseTo(800, 9);
  });
});

describe('a tie rod without a lever', () => {
  const rods = [
    ['starts on the axis', { outer: vector(0, 0, 0.2), inner: vector(0.1, -0.3, 0.2) }],
    ['points at the axis', { outer: vector(-0.1, 0.1, 0), inner: vector(-0.4, 0.4, 0.1) }],
    ['lies along the axis', { outer: vector(-0.1, 0, 0), inner: vector(-0.1, 0, 0.3) }],
    ['passes within 1 mm', { outer: vector(-0.0009, 0, 0), inner: vector(-0.0009, -0.3, 0) }],
  ] as const;

  test.each(rods)('that %s is a fault', (_, bad) => {
    const [fault] = faultsOf(rodForce(axis, bad, 10));
    expect(fault?.wrong).toMatch(/lever of -?\d\S* mm about the steering axis/);
  });

  test('is none once it passes the axis by more than 1 mm', () => {
    const close = { outer: vector(-0.0011, 0, 0), inner: vector(-0.0011, -0.3, 0) };
    expect(rodForce(axis, close, 10).ok).toBe(true);
  });
});
