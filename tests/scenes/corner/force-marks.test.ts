import { describe, expect, test } from 'vitest';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { Mark } from '#scenes/marks.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const above = (changes: Partial<Setting>, name = 'siskin, left'): readonly Mark[] =>
  marksOf(name, changes, lookIn('top'));
const spot = (marks: readonly Mark[], key: string) => markOf(marks, 'spot', key).at;

describe('a braking force', () => {
  test('acts at the contact centre and points rearward: up the page from above', () => {
    const marks = above({ brake: 2500 });
    const { from, to } = markOf(marks, 'arrow', 'force-brake');
    expect(from).toEqual(spot(marks, 'contact-centre'));
    expect(to.up).toBeGreaterThan(from.up + 20);
    expect(to.across).toBeCloseTo(from.across, 0);
  });

  test('turns with the wheel', () => {
    const { from, to } = markOf(above({ brake: 2500, steer: 30 }), 'arrow', 'force-brake');
    // A wheel turned to the left has its rear to the right of its front: the force goes there.
    expect((to.across - from.across) / (to.up - from.up)).toBeCloseTo(-Math.tan(Math.PI / 6), 1);
  });

  test('goes away from one who stands before the car', () => {
    const marks = marksOf('siskin, left', { brake: 2500 }, lookIn('front'));
    expect(markOf(marks, 'label', 'force-brake-name').text).toContain('away');
  });
});

describe('a driving force', () => {
  test('acts at the wheel centre, forward: down the page from above', () => {
    const marks = above({ drive: 2000 });
    const { from, to } = markOf(marks, 'arrow', 'force-drive');
    expect(from).toEqual(spot(marks, 'wheel-centre'));
    expect(to.up).toBeLessThan(from.up - 20);
  });

  test('comes toward one who stands before the car', () => {
    const marks = marksOf('siskin, left', { drive: 2000 }, lookIn('front'));
    expect(markOf(marks, 'label', 'force-drive-name').text).toContain('toward you');
    expect(markOf(marks, 'circle', 'force-drive-dot').filled).toBe(true);
  });
});

test('a wheel load points up from the contact centre, seen from the front and from the side', () => {
  for (const view of ['front', 'side'] as const) {
    const marks = marksOf('siskin, left', { weight: 4000 }, lookIn(view));
    const { from, to } = markOf(marks, 'arrow', 'force-weight');
    expect(from).toEqual(spot(marks, 'contact-centre'));
    expect([to.across - from.across, Math.sign(to.up - from.up)]).toEqual([0, 1]);
  }
});

test('a side force to the left points to the right from the front, on both sides of the car', () => {
  for (const name of ['siskin, left', 'siskin, right']) {
    const marks = marksOf(name, { side: 2000 }, lookIn('front'));
    const { from, to } = markOf(marks, 'arrow', 'force-side');
    expect(to.across - from.across, name).toBeGreaterThan(20);
  }
});

test('an arrow is the longer the larger the force, up to where the paper ends', () => {
  const long = (brake: number): number => {
    const { from, to } = markOf(above({ brake }), 'arrow', 'force-brake');
    return Math.hypot(to.across - from.across, to.up - from.up);
  };
  expect(long(2000)).toBeCloseTo(2 * long(1000), 6);
  expect(long(6000)).toBe(long(5500));
});

describe.each(MODEL_NAMES)('on the %s corner', (name) => {
  test.each([
    ['brake', 'brakeMoment', { brake: 2500 }],
    ['drive', 'driveMoment', { drive: 2500 }],
    ['blow', 'blowMoment', { blow: 2500, steer: 20 }],
  ] as const)(
    'the lever of a %s drawn from above makes the moment that the core says',
    (id, moment, changes) => {
      const setting = adjusted(AS_IT_STANDS, changes);
      const now = standing(modelNamed(name), setting);
      const [a, f, , opposite] = markOf(above(changes, name), 'path', `lever-${id}`).points;
      if (!a || !f || !opposite) throw new Error('a lever has four corners');
      const lever = Math.hypot(f.across - a.across, f.up - a.up) / 1000;
      // A level force turns the leaning axis with the upright share of its moment.
      const upright = now.corner.axis.direction.z;
      expect(2500 * lever * upright).toBeCloseTo(Math.abs(valueOf(moment, now)), 6);
    },
  );
});

test('without loads there is no force to be seen', () => {
  const keys = above({ steer: 20 }).map(({ key }) => key);
  expect(keys.filter((key) => /force|lever-|moment/.test(key))).toEqual([]);
});
