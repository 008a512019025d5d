import { describe, expect, test } from 'vitest';
import { spinAxis, type Corner } from '#core/corner.ts';
import { direction, vector } from '#core/vector.ts';
import { barsPicture } from '#scenes/exercise/bars-picture.ts';
import { bearingPicture } from '#scenes/exercise/bearing-picture.ts';
import { boltPicture } from '#scenes/exercise/bolt-picture.ts';
import { chartPicture } from '#scenes/exercise/chart-picture.ts';
import { contactPicture } from '#scenes/exercise/contact-picture.ts';
import { cornerPicture } from '#scenes/exercise/corner-picture.ts';
import { axlePicture } from '#scenes/exercise/axle-picture.ts';
import { tyrePicture } from '#scenes/exercise/tyre-picture.ts';
import { wheelPicture } from '#scenes/exercise/wheel-picture.ts';
import type { Mark, Scene } from '#scenes/marks.ts';

const RADIUS = 0.3;
const LEAN = 0.2;

/** An upright left wheel whose axis leans inboard and meets the road so far inboard of it. */
const corner = (scrub: number, out = 0.75): Corner => ({
  side: 'left',
  wheelCentre: vector(0, out, RADIUS),
  spin: spinAxis('left', 0, 0),
  loadedRadius: RADIUS,
  axis: {
    point: vector(0, out - scrub, 0),
    direction: direction(vector(0, -Math.tan(LEAN), 1)),
  },
});

const marked = ({ marks }: Scene, key: string): Mark => {
  const mark = marks.find((one) => one.key === key);
  if (!mark) throw new RangeError(`no mark ${key}`);
  return mark;
};

const long = (mark: Mark): number =>
  mark.kind === 'dimension' || mark.kind === 'arrow'
    ? Math.hypot(mark.to.across - mark.from.across, mark.to.up - mark.from.up)
    : NaN;

describe('a corner', () => {
  test('shows the levers about a leaning axis in their true length from the front', () => {
    const scene = cornerPicture({
      view: 'front',
      corner: corner(0.04),
      measures: [
        { of: 'leverAtRoad', says: 'at the road' },
        { of: 'shortest', says: 'at the centre' },
      ],
    });
    expect(long(marked(scene, 'leverAtRoad'))).toBeCloseTo(40 * Math.cos(LEAN), 9);
    // Up a loaded radius the axis has gone R tan σ farther inboard (plane trigonometry, from memory).
    expect(long(marked(scene, 'shortest'))).toBeCloseTo(
      (40 + 300 * Math.tan(LEAN)) * Math.cos(LEAN),
      9,
    );
  });

  test('draws a wrong scrub radius beside the right one, its axis dashed', () => {
    const scene = cornerPicture({
      view: 'front',
      corner: corner(0.04),
      measures: [{ of: 'scrubRadius', says: 'scrub radius' }],
      wrong: { corner: corner(-0.04), measures: [{ of: 'scrubRadius', says: 'yours' }] },
    });
    expect(marked(scene, 'axis-wrong').wrong).toBe(true);
    expect(marked(scene, 'wrong-scrubRadius').wrong).toBe(true);
    expect(scene.marks.some(({ key }) => key === 'tyre-wrong')).toBe(false);
    expect(scene.description).toContain('as large as the right one, and to the other side');
  });

  test('has a force along the car as a ring from the front, and as an arrow from above', () => {
    const forces = [{ at: 'road', towards: [-1, 0, 0], says: 'brake' }] as const;
    const front = cornerPicture({ view: 'front', corner: corner(0.04), forces });
    const above = cornerPicture({ view: 'top', corner: corner(0.04), forces });
    expect(marked(front, 'force-0-ring').kind).toBe('circle');
    expect(marked(above, 'force-0').kind).toBe('arrow');
  });

  test('keeps the foot of an axis to itself that is drawn from the wheel centre up', () => {
    const scene = cornerPicture({ view: 'front', axis: 'high', corner: corner(0.04) });
    const axis = marked(scene, 'axis');
    const heights = axis.kind === 'path' ? axis.points.map(({ up }) => up) : [];
    expect(Math.min(...heights)).toBeCloseTo(1000 * RADIUS, 9);
    expect(scene.description).toContain('from the wheel centre up');
  });
});

describe('a bearing', () => {
  test('presses a row at the top from above, and one at the bottom from below', () => {
    const scene = bearingPicture({
      offset_mm: 40,
      spread_mm: 60,
      measures: [],
      rows: [
        { row: 'outboard', share: 1.2, says: '' },
        { row: 'inboard', share: -0.2, says: '' },
      ],
    });
    const down = marked(scene, 'row-outboard');
    const up = marked(scene, 'row-inboard');
    expect(down.kind === 'arrow' && down.from.up > down.to.up && down.to.up > 0).toBe(true);
    expect(up.kind === 'arrow' && up.from.up < up.to.up && up.to.up < 0).toBe(true);
    expect(scene.description).toContain('The inboard row is pressed at the bottom');
  });

  test('lets contact lines meet the spin axis at half the circle times the tangent of the angle', () => {
    const scene = contactPicture({
      rows_mm: 24,
      circle_mm: 60,
      angle: 0.6,
      isSolved: true,
      measures: [{ of: 'reach', says: 'reach' }],
    });
    // ISO 281's contact angle is counted from the line square to the spin axis (from memory).
    expect(long(marked(scene, 'reach'))).toBeCloseTo(30 * Math.tan(0.6), 9);
  });
});

describe('an axle', () => {
  test('turns wheels the way that they are said to, the wrong one dashed', () => {
    const scene = axlePicture({
      scrub_mm: 20,
      turns: { left: 1, right: -1 },
      wrong: { right: 1 },
    });
    const sweep = (key: string): number => {
      const mark = marked(scene, key);
      return mark.kind === 'turn' ? mark.sweep : NaN;
    };
    expect(sweep('left-turn')).toBeGreaterThan(0);
    expect(sweep('right-turn')).toBeLessThan(0);
    expect(sweep('wrong-right-turn')).toBeGreaterThan(0);
    expect(scene.description).toContain('Dashed is the road that was taken: The right wheel');
  });
});

describe('parts cut open', () => {
  test('a wheel has its inset from the middle of the rim to the spacer', () => {
    const scene = wheelPicture({
      wheel: { middle_mm: -30, width_mm: 180 },
      spacer_mm: 12,
      measures: [
        { of: 'inset', says: 'inset' },
        { of: 'back', says: 'back' },
      ],
    });
    expect(long(marked(scene, 'inset'))).toBeCloseTo(42, 9);
    expect(long(marked(scene, 'back'))).toBeCloseTo(132, 9);
  });

  test('a spacer is missing at the end of a bolt', () => {
    const engaged = (spacer_mm: number): number =>
      long(
        marked(
          boltPicture({
            ...{ length_mm: 40, wheel_mm: 12, spacer_mm },
            measures: [{ of: 'engaged', says: 'engaged' }],
          }),
          'engaged',
        ),
      );
    expect(engaged(0)).toBeCloseTo(28, 9);
    expect(engaged(15)).toBeCloseTo(13, 9);
  });

  test('tyres stand on the same road', () => {
    const scene = tyrePicture({
      tyre: { diameter_mm: 640, rim_mm: 406.4 },
      before: { diameter_mm: 610, rim_mm: 381 },
      measures: [{ of: 'height', says: 'sidewall' }],
    });
    const foot = (key: string): number => {
      const mark = marked(scene, key);
      return mark.kind === 'circle' ? mark.centre.up - mark.radius : NaN;
    };
    expect(foot('tyre')).toBeCloseTo(0, 9);
    expect(foot('before')).toBeCloseTo(0, 9);
    expect(long(marked(scene, 'height'))).toBeCloseTo((640 - 406.4) / 2, 9);
  });
});

test.each([
  ['beside its curve, where nothing is hidden', 14, (y: number) => y > 30],
  ['above the grid, where it would hide the other curve', 27, (y: number) => y < 30],
])('the name of a curve stands %s', (_, factor, fits) => {
  // Two curves a · factor / x², as far as the grid goes; of the second one only a corner may be left.
  const curve = (a: number): (readonly [number, number])[] =>
    Array.from({ length: 25 }, (_one, i) => 2 + i / 4)
      .map((x): readonly [number, number] => [x, (a * factor * 20) / (x * x)])
      .filter(([, y]) => y <= 250);
  const { shapes } = chartPicture({
    across: { name: 'load', least: 2, most: 8, numbered: 1, division: 0.5 },
    up: { name: 'life', least: 0, most: 250, numbered: 50, division: 10 },
    curves: [
      { says: 'balls', points: curve(20) },
      { says: 'tapered rollers', points: curve(29) },
    ],
  });
  const name = shapes.find(({ key }) => key === 'name-1');
  expect(name?.kind === 'text' && fits(name.y)).toBe(true);
});

test('bars are true to one another, and a negative one hangs below the line', () => {
  const scene = barsPicture({
    title: 'Camber',
    bars: [
      { says: 'in', value: -2 },
      { says: 'out', value: 4 },
      { says: 'yours', value: 1, wrong: true },
    ],
  });
  const top = (i: number): number => {
    const mark = marked(scene, `bar-${i}`);
    return mark.kind === 'path' ? (mark.points[1]?.up ?? NaN) : NaN;
  };
  expect(top(1) / top(0)).toBeCloseTo(-2, 9);
  expect(top(1) / top(2)).toBeCloseTo(4, 9);
  expect(scene.description).toContain('higher than in');
});
