import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cross, dot, length, minus, vector } from '#core/vector.ts';
import { projected } from '#scenes/plane.ts';
import { allowedViewpoint, seenFrom, sightOf } from '#scenes/space/viewpoint.ts';

const anyViewpoint = fc
  .record({
    round: fc.double({ min: -720, max: 720, noNaN: true }),
    above: fc.double({ min: -30, max: 120, noNaN: true }),
  })
  .map(allowedViewpoint);

const metre = fc.double({ min: -1, max: 1, noNaN: true });
const anyPoint = fc.tuple(metre, metre, metre).map(([x, y, z]) => vector(x, y, z));

test('the three directions of a viewpoint have length 1, stand square to one another, and are right-handed', () => {
  fc.assert(
    fc.property(anyViewpoint, (viewpoint) => {
      const { toward, right, up } = sightOf(viewpoint);
      for (const one of [toward, right, up]) expect(length(one)).toBeCloseTo(1, 12);
      expect(dot(toward, right)).toBeCloseTo(0, 12);
      expect(dot(toward, up)).toBeCloseTo(0, 12);
      expect(dot(right, up)).toBeCloseTo(0, 12);
      expect(length(minus(cross(right, up), toward))).toBeCloseTo(0, 12);
    }),
  );
});

test('what is upright stays upright on paper, and right is always level', () => {
  fc.assert(
    fc.property(anyViewpoint, (viewpoint) => {
      const { right, up } = sightOf(viewpoint);
      expect(right.z).toBe(0);
      expect(up.z).toBeGreaterThanOrEqual(-1e-12);
      expect(seenFrom(sightOf(viewpoint), vector(0, 0, 1)).across).toBeCloseTo(0, 9);
    }),
  );
});

test('a length is never longer on paper than in space, and is whole when it lies square to the sight', () => {
  fc.assert(
    fc.property(anyViewpoint, anyPoint, (viewpoint, at) => {
      const sight = sightOf(viewpoint);
      const { across, up } = seenFrom(sight, at);
      const depth = 1000 * dot(at, sight.toward);
      expect(Math.hypot(across, up, depth)).toBeCloseTo(1000 * length(at), 6);
    }),
  );
});

test('from ahead, from the left and from above it is the drawing of the three views', () => {
  fc.assert(
    fc.property(anyPoint, (at) => {
      const views = [
        ['front', { round: 0, above: 0 }],
        ['side', { round: 90, above: 0 }],
        ['top', { round: 0, above: 90 }],
      ] as const;
      for (const [view, viewpoint] of views) {
        const seen = seenFrom(sightOf(viewpoint), at);
        const flat = projected(view, 'left', at);
        expect(seen.across).toBeCloseTo(flat.across, 9);
        expect(seen.up).toBeCloseTo(flat.up, 9);
      }
    }),
  );
});

test('a viewpoint goes round and round, and stays above the road', () => {
  expect(allowedViewpoint({ round: 190, above: 95 })).toEqual({ round: -170, above: 90 });
  expect(allowedViewpoint({ round: -180, above: -3 })).toEqual({ round: 180, above: 5 });
  expect(allowedViewpoint({ round: 540, above: 30 })).toEqual({ round: 180, above: 30 });
});
