import { describe, expect, test } from 'vitest';
import { bearingScene } from '#scenes/bearing/bearing-scene.ts';
import { markOf } from '../corner/marks-of.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { bearingLook, bearingOf, settingOf } from './bearing-of.ts';

const plain = (text: string): string => text.replaceAll('\u202f', ' ');
const keysOf = (marks: readonly { readonly key: string }[]): readonly string[] =>
  marks.map(({ key }) => key);

describe('the section', () => {
  test('has pressure centres as far apart as the document says, where the contact lines meet the spin axis', () => {
    const marks = bearingOf('linnet, left', {});
    const [out, inb] = (['outboard', 'inboard'] as const).map(
      (row) => markOf(marks, 'spot', `pressure-centre-${row}`).at,
    );
    expect((out?.across ?? NaN) - (inb?.across ?? NaN)).toBeCloseTo(62, 9);
    const ball = markOf(marks, 'circle', 'element-outboard-above');
    // tan 35° = 0.7002: back to back the line goes outboard on its way down.
    const slope = ((out?.across ?? NaN) - ball.centre.across) / ball.centre.up;
    expect(slope).toBeCloseTo(0.7002, 4);
  });

  test('has its outboard row on the right of a left wheel and on the left of a right one', () => {
    const across = (name: string): number =>
      markOf(bearingOf(name, {}), 'spot', 'pressure-centre-outboard').at.across;
    expect(across('siskin, left')).toBeCloseTo(33, 9);
    expect(across('siskin, right')).toBeCloseTo(-33, 9);
  });

  test('carries the load line outboard by a spacer, and keeps it pale where it was', () => {
    const marks = bearingOf('linnet, left', { spacer: 20 });
    const at = (key: string): number | undefined => markOf(marks, 'path', key).points[0]?.across;
    expect(at('load-line')).toBeCloseTo(24, 9);
    expect(at('load-line-before')).toBeCloseTo(4, 9);
    expect(markOf(marks, 'path', 'load-line-before').before).toBe(true);
    expect(keysOf(marks)).toContain('spacer-above');
    expect(keysOf(bearingOf('linnet, left', {}))).not.toContain('load-line-before');
  });

  test('a wheel of less inset takes the load line out as a spacer does, with nothing between hub and wheel', () => {
    const marks = bearingOf('linnet, left', { inset: -20 });
    expect(markOf(marks, 'path', 'load-line').points[0]?.across).toBeCloseTo(24, 9);
    expect(keysOf(marks)).not.toContain('spacer-above');
  });
});

describe('arrows', () => {
  const rise = (marks: Parameters<typeof markOf>[0], key: string): number => {
    const { from, to } = markOf(marks, 'arrow', key);
    return to.up - from.up;
  };

  test('of the rows hold down what the road lifts, and are together as long as its arrow', () => {
    const marks = bearingOf('linnet, left', { weight: 4150 });
    const held = rise(marks, 'row-outboard') + rise(marks, 'row-inboard');
    expect(rise(marks, 'weight')).toBeGreaterThan(0);
    expect(held).toBeCloseTo(-rise(marks, 'weight'), 9);
  });

  test('of a row point up once the load line has passed the other one’s pressure centre', () => {
    // Half the spread is 31 mm, and the load line begins at 4.
    const between = bearingOf('linnet, left', { weight: 4150, spacer: 26 });
    const past = bearingOf('linnet, left', { weight: 4150, spacer: 28 });
    expect(rise(between, 'row-inboard')).toBeLessThan(0);
    expect(rise(past, 'row-inboard')).toBeGreaterThan(0);
    expect(rise(past, 'row-outboard')).toBeLessThan(rise(between, 'row-outboard'));
  });

  test('of the thrusts pull the hub apart, and differ by the side force', () => {
    const look = { view: 'wheel', duty: 'turn', measures: ['outboardThrust'] } as const;
    const marks = bearingOf('siskin, left', { weight: 5800, side: -2600 }, look);
    const run = (key: string): number => {
      const { from, to } = markOf(marks, 'arrow', key);
      return to.across - from.across;
    };
    expect(run('thrust-outboard')).toBeGreaterThan(0);
    expect(run('thrust-inboard')).toBeLessThan(0);
    expect(run('thrust-outboard') + run('thrust-inboard') + run('side')).toBeCloseTo(0, 9);
  });

  test('the side force of an outer wheel points toward the car on either side', () => {
    const look = { view: 'wheel', duty: 'turn' } as const;
    const run = (name: string, side: number): number => {
      const { from, to } = markOf(bearingOf(name, { weight: 5000, side }, look), 'arrow', 'side');
      return to.across - from.across;
    };
    expect(run('siskin, left', -2000)).toBeLessThan(0);
    expect(run('siskin, right', 2000)).toBeGreaterThan(0);
  });
});

test('the carrying contact lines change from the top to the bottom with the sign of the row’s load', () => {
  const end = (spacer: number): number => {
    const marks = bearingOf('linnet, left', { weight: 4150, spacer });
    return markOf(marks, 'path', 'carrying-inboard').points.at(-1)?.up ?? NaN;
  };
  expect(end(0)).toBeGreaterThan(0);
  expect(end(40)).toBeLessThan(0);
});

test('the line of action runs from the road to where wheel load and side force together cross the spin axis', () => {
  const marks = bearingOf(
    'siskin, left',
    { weight: 5800, side: -2600 },
    { view: 'wheel', duty: 'turn', measures: ['loadCrossing'] },
  );
  const [road, axis] = markOf(marks, 'path', 'line-of-action').points;
  if (!road || !axis) throw new Error('a line has two ends');
  expect((axis.across - road.across) / (axis.up - road.up)).toBeCloseTo(-2600 / 5800, 9);
  expect(axis.up).toBe(0);
});

test('a description is written from the same numbers', () => {
  const words = (changes: Parameters<typeof settingOf>[0]): string =>
    plain(bearingScene(modelNamed('linnet, left'), settingOf(changes), bearingLook()).description);
  expect(words({})).toContain('No load.');
  expect(words({ weight: 4150, spacer: 40 })).toMatch(
    /62\.0 mm apart.*44\.0 mm outboard.*Wheel load 4150 N.*Outboard row 5020 N at the top, inboard row 870 N at the bottom.*inboard row is loaded from the other side/,
  );
});

test('a name stands at the middle of its force, so that two heads that meet are told apart', () => {
  const marks = bearingOf('pelican, left', { weight: 5000, spacer: 22 });
  for (const key of ['weight', 'row-outboard']) {
    const { from, to } = markOf(marks, 'arrow', key);
    const { at } = markOf(marks, 'label', `${key}-name`);
    expect(at.up).toBeCloseTo((from.up + to.up) / 2, 9);
  }
});
