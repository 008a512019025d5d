import { describe, expect, test } from 'vitest';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import type { Mark } from '#scenes/marks.ts';
import { VIEWS, type Point } from '#scenes/plane.ts';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const spot = (marks: readonly Mark[], key: string): Point => markOf(marks, 'spot', key).at;
const keysOf = (marks: readonly Mark[]): readonly string[] => marks.map(({ key }) => key);

/** How far a point lies beside the line through two others, in millimetres. */
function besideLine(p: Point, [a, b]: readonly Point[]): number {
  if (!a || !b) throw new Error('a line has two ends');
  const run = Math.hypot(b.across - a.across, b.up - a.up);
  return (
    Math.abs((b.across - a.across) * (p.up - a.up) - (b.up - a.up) * (p.across - a.across)) / run
  );
}

describe.each(MODEL_NAMES)('the %s corner', (name) => {
  const outboard = name.endsWith('left') ? 1 : -1;

  test('has its wheel outboard of its axis: to the right from the front on a left corner', () => {
    for (const view of ['front', 'top'] as const) {
      const marks = marksOf(name, {}, lookIn(view));
      const apart = spot(marks, 'wheel-centre').across - spot(marks, 'lower-pivot').across;
      expect(apart * outboard, view).toBeGreaterThan(20);
    }
  });

  test('rolls to the left from the side on a left corner: its axis meets the road there, ahead', () => {
    const marks = marksOf(name, {}, lookIn('side'));
    const ahead = spot(marks, 'ground-point').across - spot(marks, 'contact-centre').across;
    expect(ahead * -outboard).toBeGreaterThan(5);
  });

  test('has forward down the page from above: its axis meets the road below the contact centre', () => {
    const marks = marksOf(name, {}, lookIn('top'));
    expect(spot(marks, 'ground-point').up).toBeLessThan(spot(marks, 'contact-centre').up);
  });

  test.each(VIEWS)(
    'has an axis through both pivots and its point on the road, from the %s',
    (view) => {
      const marks = marksOf(name, { upperInboard: 20, steer: 12 }, lookIn(view));
      const { points } = markOf(marks, 'path', 'axis');
      for (const key of ['lower-pivot', 'upper-pivot', 'ground-point']) {
        expect(besideLine(spot(marks, key), points), key).toBeLessThan(1e-6);
      }
    },
  );

  test('stands on the road with its contact centre, however it is set', () => {
    for (const changes of [
      {},
      { radius: 60, spacer: 20 },
      { radius: -40 },
      { steer: 35, camberAtTop: -3 },
    ]) {
      for (const view of ['front', 'side'] as const) {
        const marks = marksOf(name, changes, lookIn(view));
        const road = markOf(marks, 'ground', 'ground').up;
        expect(spot(marks, 'contact-centre').up).toBeCloseTo(road, 9);
        const lowest = Math.min(...markOf(marks, 'path', 'tyre').points.map(({ up }) => up));
        expect(lowest).toBeCloseTo(road, 9);
      }
    }
  });

  test('has no road from above, where it would be everywhere', () => {
    expect(keysOf(marksOf(name, {}, lookIn('top')))).not.toContain('ground');
  });
});

describe('the state before a change', () => {
  const before = (changes: Parameters<typeof marksOf>[1]) =>
    marksOf('linnet, left', changes, lookIn('front')).filter((mark) => mark.before);

  test('is not shown while the car stands, is steered or is loaded', () => {
    for (const changes of [{}, { steer: 20 }, { brake: 3000, weight: 4000 }]) {
      expect(before(changes)).toEqual([]);
    }
  });

  test('is the pale tyre and the pale axis once something else has changed', () => {
    expect(keysOf(before({ spacer: 1 }))).toEqual(['tyre-before', 'axis-before']);
    expect(keysOf(before({ upperInboard: -5, steer: 20 }))).toEqual(['tyre-before', 'axis-before']);
  });

  test('is steered as the car is now', () => {
    const steered = marksOf('linnet, left', { steer: 25 }, lookIn('top'));
    const changed = marksOf('linnet, left', { steer: 25, inset: 10 }, lookIn('top'));
    expect(markOf(changed, 'path', 'tyre-before').points).toEqual(
      markOf(steered, 'path', 'tyre').points,
    );
  });
});

describe('a spacer of 20 mm', () => {
  const look = lookIn('front', { closeness: 'hub' });
  const [bare, spaced] = [{}, { spacer: 20 }].map((changes) =>
    marksOf('pelican, left', changes, look),
  );
  const pointsOf = (marks: readonly Mark[] | undefined, key: string): readonly Point[] =>
    markOf(marks ?? [], 'path', key).points;

  test('moves the wheel out by as much, and leaves axis, hub and knuckle where they are', () => {
    expect(
      spot(spaced ?? [], 'wheel-centre').across - spot(bare ?? [], 'wheel-centre').across,
    ).toBeCloseTo(20, 1);
    for (const key of ['axis', 'hub', 'knuckle']) {
      for (const [i, { across, up }] of pointsOf(bare, key).entries()) {
        expect(pointsOf(spaced, key)[i]?.across).toBeCloseTo(across, 9);
        expect(pointsOf(spaced, key)[i]?.up).toBeCloseTo(up, 9);
      }
    }
  });

  test('is to be seen between hub and wheel, 20 mm thick', () => {
    expect(keysOf(bare ?? []).filter((key) => key.startsWith('spacer'))).toEqual([]);
    const across = pointsOf(spaced, 'spacer1').map((point) => point.across);
    expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(20, 3);
  });
});

describe('the suspension', () => {
  test('has a strut on cars with struts, from the front and from the side', () => {
    expect(keysOf(marksOf('linnet, left', {}, lookIn('front')))).toContain('spring');
    expect(keysOf(marksOf('linnet, left', {}, lookIn('side')))).toContain('spring');
    expect(keysOf(marksOf('linnet, left', {}, lookIn('top')))).not.toContain('spring');
  });

  test('has an upper arm on cars with double arms', () => {
    expect(keysOf(marksOf('siskin, left', {}, lookIn('front')))).toContain('upper-arm');
    expect(keysOf(marksOf('linnet, left', {}, lookIn('front')))).not.toContain('upper-arm');
  });

  test('has a tie rod from above, whose outer end turns with the wheel', () => {
    const [straight, turned] = [{}, { steer: 30 }].map((changes) =>
      markOf(marksOf('siskin, left', changes, lookIn('top')), 'circle', 'rod-end'),
    );
    expect(turned?.centre).not.toEqual(straight?.centre);
  });
});

describe('the window', () => {
  test('stays where it is while things move in it, so that nothing slides under the finger', () => {
    const model = modelNamed('siskin, left');
    for (const view of VIEWS) {
      const [still, moved] = [
        AS_IT_STANDS,
        { ...AS_IT_STANDS, spacer: 60, radius: 60, steer: 40 },
      ].map((setting) => cornerScene(model, setting, lookIn(view)).window);
      expect(moved).toEqual(still);
    }
  });
});

describe('names', () => {
  const names = ['axis', 'upper', 'lower', 'ground', 'contact', 'centre'] as const;

  test('stand at what they name', () => {
    const marks = marksOf('siskin, left', { spacer: 10 }, lookIn('front', { names }));
    for (const [name, key] of [
      ['upper', 'upper-pivot'],
      ['lower', 'lower-pivot'],
      ['ground', 'ground-point'],
      ['contact', 'contact-centre'],
      ['centre', 'wheel-centre'],
    ] as const) {
      expect(markOf(marks, 'label', `name-${name}`).at).toEqual(spot(marks, key));
    }
  });

  test.each(['whole', 'road', 'hub'] as const)(
    'name the axis where it can be seen, close to the %s too',
    (closeness) => {
      for (const model of MODEL_NAMES) {
        const look = lookIn('front', { names, closeness });
        const { marks, window } = cornerScene(modelNamed(model), AS_IT_STANDS, look);
        const { at } = markOf(marks, 'label', 'name-axis');
        expect(besideLine(at, markOf(marks, 'path', 'axis').points)).toBeLessThan(1e-6);
        expect(Math.abs(at.up - window.centre.up)).toBeLessThan(window.height / 2);
      }
    },
  );
});

test('a scene is titled by side and view', () => {
  const title = (name: string, view: 'front' | 'top') =>
    cornerScene(modelNamed(name), AS_IT_STANDS, lookIn(view)).title;
  expect(title('linnet, left', 'front')).toBe('Left front corner from the front');
  expect(title('linnet, right', 'top')).toBe('Right front corner from above');
});
