import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frameOf, isOnPaper, offPaper, onPaper, PAPER, rounded } from '#scenes/paper/frame.ts';
import { point } from '#scenes/plane.ts';

const FRAME = frameOf({ centre: point(700, 300), height: 600 });

describe('a place on the paper', () => {
  test('is the middle for the middle of the window', () => {
    expect(onPaper(FRAME, point(700, 300))).toEqual({ x: 200, y: 150 });
  });

  test('goes right for what goes across, and down for what goes down', () => {
    expect(onPaper(FRAME, point(720, 300))).toEqual({ x: 210, y: 150 });
    expect(onPaper(FRAME, point(700, 280))).toEqual({ x: 200, y: 160 });
  });

  test('reaches from edge to edge over the height of the window', () => {
    expect(onPaper(FRAME, point(700, 600)).y).toBe(0);
    expect(onPaper(FRAME, point(700, 0)).y).toBe(PAPER.height);
  });

  test('is taken back to where it came from', () => {
    const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
    const height = fc.double({ min: 100, max: 1200, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(coordinate, coordinate, coordinate, coordinate),
        height,
        ([a, b, c, d], h) => {
          const frame = frameOf({ centre: point(a, b), height: h });
          const back = offPaper(frame, onPaper(frame, point(c, d)));
          expect(back.across).toBeCloseTo(c, 6);
          expect(back.up).toBeCloseTo(d, 6);
        },
      ),
    );
  });
});

test('a place is on the paper up to its edges, or so far within them', () => {
  expect(isOnPaper(FRAME, { x: 0, y: 300 })).toBe(true);
  expect(isOnPaper(FRAME, { x: -0.01, y: 150 })).toBe(false);
  expect(isOnPaper(FRAME, { x: 200, y: 300.01 })).toBe(false);
  expect(isOnPaper(FRAME, { x: 20, y: 20 }, 20)).toBe(true);
  expect(isOnPaper(FRAME, { x: 19, y: 20 }, 20)).toBe(false);
});

test('a number on paper has two decimals at most, and no negative nought', () => {
  expect([1.005, -1.234, 2 / 3, 12].map(rounded)).toEqual([1, -1.23, 0.67, 12]);
  expect(Object.is(rounded(-0.001), 0)).toBe(true);
});
