import { describe, expect, test } from 'vitest';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { Mark } from '#scenes/marks.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const STATIONS = ['rodForce', 'rackForce'] as const;

const above = (name: string, changes: Partial<Setting>): readonly Mark[] =>
  marksOf(name, changes, lookIn('top', { measures: STATIONS, names: ['arm', 'rod', 'rack'] }));

const arrow = (marks: readonly Mark[], id: (typeof STATIONS)[number]) => {
  const { from, to } = markOf(marks, 'arrow', `force-${id}`);
  return { across: to.across - from.across, up: to.up - from.up };
};

describe('seen from above, with the car’s left on the right', () => {
  test('a rod in tension pulls the arm inboard and the rack outboard', () => {
    const marks = above('siskin, left', { blow: 4000 });
    expect(arrow(marks, 'rodForce').across).toBeLessThan(-20);
    expect(arrow(marks, 'rackForce').across).toBeGreaterThan(20);
    expect(markOf(marks, 'label', 'force-rodForce-name').text).toMatch(/N in tension$/);
    expect(markOf(marks, 'label', 'force-rackForce-name').text).toMatch(/N to the left$/);
  });

  test('a rod in compression pushes the arm outboard and the rack inboard', () => {
    const marks = above('linnet, left', { blow: 4000 });
    expect(arrow(marks, 'rodForce').across).toBeGreaterThan(20);
    expect(arrow(marks, 'rackForce').across).toBeLessThan(-20);
    expect(markOf(marks, 'label', 'force-rodForce-name').text).toMatch(/N in compression$/);
    expect(markOf(marks, 'label', 'force-rackForce-name').text).toMatch(/N to the right$/);
  });

  test('the arrow on the rack lies along the rack, wherever the rod points', () => {
    expect(arrow(above('siskin, left', { blow: 4000, steer: 25 }), 'rackForce').up).toBeCloseTo(0);
  });
});

describe.each(MODEL_NAMES)('on the %s corner', (name) => {
  test('the lever of the rod, taken upright to the axis, is about that of the core', () => {
    const [a, f] = middles(markOf(above(name, {}), 'path', 'lever-rod').points);
    const now = standing(modelNamed(name), AS_IT_STANDS);
    const force = valueOf('rodForce', standing(modelNamed(name), at({ blow: 1000 })));
    const moment = valueOf('blowMoment', standing(modelNamed(name), at({ blow: 1000 })));
    const drawn = Math.hypot(f.across - a.across, f.up - a.up) / 1000;
    // A rod that climbs on its way inboard turns the leaning axis a little less.
    const shown = (drawn * now.corner.axis.direction.z) / Math.abs(moment / force);
    expect(shown).toBeGreaterThan(0.97);
    expect(shown).toBeLessThan(1.03);
  });

  test('the steering wheel is turned the way the road wheel is, wherever the rack lies', () => {
    for (const changes of [
      { blow: 4000 },
      { blow: 4000, steer: 25 },
      { brake: 3000, spacer: 30 },
    ]) {
      const now = standing(modelNamed(name), at(changes));
      const moment = valueOf('blowMoment', now) + valueOf('brakeMoment', now);
      const { handwheelTorque, rimForce, rimForceUnassisted } = inHands(now);
      expect(Math.sign(handwheelTorque)).toBe(Math.sign(moment));
      expect(rimForce * now.gear.rimRadius).toBeCloseTo(handwheelTorque, 9);
      expect(rimForceUnassisted).toBeCloseTo(rimForce * now.gear.assist, 9);
    }
  });
});

test('nobody who does not ask for it sees the rack or its forces', () => {
  const keys = marksOf('siskin, left', { blow: 4000 }, lookIn('top')).map(({ key }) => key);
  expect(keys.filter((key) => /rack|rodForce|lever-rod/.test(key))).toEqual([]);
});

test('without a load the rod has a lever and no force', () => {
  const keys = above('siskin, left', {}).map(({ key }) => key);
  expect(keys).toContain('lever-rod');
  expect(keys.filter((key) => key.startsWith('force-'))).toEqual([]);
});

test('the rack slides where the tie rod goes, and its housing stays', () => {
  const [ahead, turned] = [above('siskin, left', {}), above('siskin, left', { steer: 20 })];
  const points = (marks: readonly Mark[], key: string) => markOf(marks, 'path', key).points;
  expect(points(turned, 'rack')[0]?.across).toBeGreaterThan(
    (points(ahead, 'rack')[0]?.across ?? NaN) + 20,
  );
  expect(points(turned, 'rack-housing')).toEqual(points(ahead, 'rack-housing'));
});

test('parts of the steering are named from above only', () => {
  const names = ['arm', 'rod', 'rack'] as const;
  for (const view of ['front', 'side'] as const) {
    const keys = marksOf('siskin, left', {}, lookIn(view, { names })).map(({ key }) => key);
    expect(keys.filter((key) => key.startsWith('name-'))).toEqual([]);
  }
});

const at = (changes: Partial<Setting>): Setting => adjusted(AS_IT_STANDS, changes);

const inHands = (now: ReturnType<typeof standing>) => ({
  handwheelTorque: valueOf('handwheelTorque', now),
  rimForce: valueOf('rimForce', now),
  rimForceUnassisted: valueOf('rimForceUnassisted', now),
});

/** Where a bar begins and ends, from its four corners. */
function middles(points: readonly { across: number; up: number }[]) {
  const [a, b, c, d] = points;
  if (!a || !b || !c || !d) throw new Error('a bar has four corners');
  const middle = (p: typeof a, q: typeof a) => ({
    across: (p.across + q.across) / 2,
    up: (p.up + q.up) / 2,
  });
  return [middle(a, d), middle(b, c)] as const;
}
