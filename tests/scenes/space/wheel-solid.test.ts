import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { direction, vector } from '#core/vector.ts';
import { hides, type WheelSolid } from '#scenes/space/wheel-solid.ts';
import { seenRuns, straight } from '#scenes/space/seen-runs.ts';

/** A wheel at the origin, its spin axis to the left, its disc 40 mm outboard. */
const WHEEL: WheelSolid = {
  centre: vector(0, 0, 0),
  spin: vector(0, 1, 0),
  halfWidth: 0.1,
  inner: 0.2,
  outer: 0.3,
  disc: 0.04,
};

const OUTBOARD = vector(0, 1, 0);
const INBOARD = vector(0, -1, 0);
const AHEAD = vector(1, 0, 0);

describe('a wheel in the line of sight', () => {
  test.each([
    ['a pivot inside the rim, from outboard: the disc', vector(0, -0.05, 0.1), OUTBOARD, true],
    ['the same pivot from inboard: the open side', vector(0, -0.05, 0.1), INBOARD, false],
    ['the same pivot from ahead: the tyre', vector(0, -0.05, 0.1), AHEAD, true],
    ['a pivot beside the wheel, from ahead', vector(0, -0.15, 0.1), AHEAD, false],
    ['a point behind the tyre', vector(-1, 0, 0.25), AHEAD, true],
    ['a point before the tyre', vector(1, 0, 0.25), AHEAD, false],
    ['a point far above', vector(-1, 0, 0.5), AHEAD, false],
    ['through the tyre’s tube from outboard', vector(0, -0.4, 0.25), OUTBOARD, true],
    ['past the tyre’s tread from outboard', vector(0, -0.4, 0.35), OUTBOARD, false],
  ] as const)('%s', (_what, at, toward, hidden) => {
    expect(hides(WHEEL, at, toward)).toBe(hidden);
  });

  test('is found the same by walking along the line of sight in small steps', () => {
    const part = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    const place = fc.tuple(part, part, part);
    fc.assert(
      fc.property(place, place, ([x, y, z], [dx, dy, dz]) => {
        if (Math.hypot(dx, dy, dz) < 0.05) return;
        const toward = direction(vector(dx, dy, dz));
        let walked = false;
        let before = Math.sign(y - WHEEL.disc);
        for (let t = 1e-4; t < 2; t += 0.0005) {
          const [px, py, pz] = [x + t * toward.x, y + t * toward.y, z + t * toward.z];
          const radius = Math.hypot(px, pz);
          const side = Math.sign(py - WHEEL.disc);
          const inTube =
            Math.abs(py) < WHEEL.halfWidth && radius > WHEEL.inner && radius < WHEEL.outer;
          if (inTube || (side !== before && radius < WHEEL.inner)) walked = true;
          before = side;
        }
        // A line that only grazes a corner may be missed by the steps, never the other way about.
        if (walked) expect(hides(WHEEL, vector(x, y, z), toward)).toBe(true);
        else if (hides(WHEEL, vector(x, y, z), toward)) expect(grazes(x, y, z, toward)).toBe(true);
      }),
    );
  });
});

/** Whether a wheel thinner by a step of the walk would not be hit. */
const grazes = (x: number, y: number, z: number, toward: ReturnType<typeof vector>): boolean =>
  !hides(
    { ...WHEEL, halfWidth: 0.099, inner: 0.201, outer: 0.299, disc: 0.04 },
    vector(x, y, z),
    toward,
  ) || !hides({ ...WHEEL, halfWidth: 0.099, inner: 0.199, outer: 0.299 }, vector(x, y, z), toward);

describe('a line that goes out of sight', () => {
  const line = straight(vector(0, 0, 0), vector(1, 0, 0), 10);

  test('is cut where it goes, and nothing of it is lost', () => {
    const runs = seenRuns(line, ({ x }) => x > 0.33 && x < 0.61);
    expect(runs.map(({ hidden }) => hidden)).toEqual([false, true, false]);
    expect(runs[0]?.points.at(-1)?.x).toBeCloseTo(0.33, 3);
    expect(runs[1]?.points.at(-1)?.x).toBeCloseTo(0.61, 3);
    for (const [i, run] of runs.slice(1).entries()) {
      expect(run.points[0]).toEqual(runs[i]?.points.at(-1));
    }
  });

  test('is one run where nothing hides it, and none where there is no line', () => {
    expect(seenRuns(line, () => false)).toEqual([{ hidden: false, points: line }]);
    expect(seenRuns([], () => true)).toEqual([]);
  });
});
