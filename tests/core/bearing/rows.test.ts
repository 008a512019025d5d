import { describe, expect, test } from 'vitest';
import { flippedRow, loadLineCrossing, radialLoads, tiltingMoment } from '#core/bearing/rows.ts';

const spacing = { loadLineOffset: 0, spread: 0.06 };
const straight = { vertical: 4000, inward: 0 };

describe('radial loads', () => {
  test('a load line in the mid-plane loads both rows with half the wheel load', () => {
    expect(radialLoads(spacing, straight, 0.3)).toEqual({ outboard: 2000, inboard: 2000 });
  });

  test('a load line through the outboard pressure centre leaves the inboard row empty', () => {
    const { outboard, inboard } = radialLoads({ ...spacing, loadLineOffset: 0.03 }, straight, 0.3);
    expect(outboard).toBeCloseTo(4000, 9);
    expect(inboard).toBeCloseTo(0, 9);
  });

  test('a spacer loads the outboard row and relieves the inboard one', () => {
    const { outboard, inboard } = radialLoads({ ...spacing, loadLineOffset: 0.015 }, straight, 0.3);
    expect(outboard).toBeCloseTo(3000, 9);
    expect(inboard).toBeCloseTo(1000, 9);
  });

  test('a force toward the car loads the inboard row: 300 N at 0.3 m over 0.06 m is 1500 N', () => {
    const { outboard, inboard } = radialLoads(spacing, { vertical: 4000, inward: 300 }, 0.3);
    expect(outboard).toBeCloseTo(500, 9);
    expect(inboard).toBeCloseTo(3500, 9);
  });
});

describe('the line of action of the tyre force', () => {
  test('straight ahead it crosses the spin axis at the load line', () => {
    expect(loadLineCrossing({ loadLineOffset: 0.004 }, straight, 0.3)).toBe(0.004);
  });

  test('in a turn it leans inboard on the outer wheel and outboard on the inner wheel', () => {
    const outer = { vertical: 5000, inward: 2500 };
    const inner = { vertical: 2500, inward: -500 };
    expect(loadLineCrossing(spacing, outer, 0.3)).toBeCloseTo(-0.15, 12);
    expect(loadLineCrossing(spacing, inner, 0.3)).toBeCloseTo(0.06, 12);
  });

  test('a lifted wheel has none', () => {
    expect(() => loadLineCrossing(spacing, { vertical: 0, inward: 100 }, 0.3)).toThrow(RangeError);
  });
});

describe('the flipped row', () => {
  test.each([
    { turn: 'straight ahead', inward: 0, flipped: undefined },
    { turn: 'on the outer wheel of a fast turn', inward: 2500, flipped: 'outboard' },
    { turn: 'on the inner wheel of a fast turn', inward: -2500, flipped: 'inboard' },
  ])('is $flipped $turn', ({ inward, flipped }) => {
    expect(flippedRow(radialLoads(spacing, { vertical: 4000, inward }, 0.3))).toBe(flipped);
  });
});

describe('the tilting moment', () => {
  test('of a load line 15 mm outboard under 4000 N is 60 N·m, top inboard', () => {
    expect(tiltingMoment({ loadLineOffset: 0.015 }, straight, 0.3)).toBeCloseTo(60, 12);
  });

  test('of 300 N toward the car at a radius of 0.3 m is 90 N·m, top outboard', () => {
    expect(tiltingMoment(spacing, { vertical: 0, inward: 300 }, 0.3)).toBeCloseTo(-90, 12);
  });
});
