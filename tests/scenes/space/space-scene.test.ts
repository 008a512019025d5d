import { describe, expect, test } from 'vitest';
import type { Mark, Path } from '#scenes/marks.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { viewpointWords } from '#scenes/space/describe-space.ts';
import { spaceScene } from '#scenes/space/space-scene.ts';
import { firstViewpoint, type Viewpoint } from '#scenes/space/viewpoint.ts';
import { TRAINING_CARS, trainingCar } from '../../training-cars.ts';

const siskin = trainingCar('siskin');

const scene = (
  setting: Partial<Setting> = {},
  viewpoint: Viewpoint = firstViewpoint('left'),
  car = siskin,
) =>
  spaceScene(car.left, adjusted(AS_IT_STANDS, setting), {
    viewpoint,
    measures: ['scrubRadius', 'trail'],
    units: 'metric',
  });

const named = (marks: readonly Mark[], key: string): readonly Path[] =>
  marks.filter((mark): mark is Path => mark.kind === 'path' && mark.key.startsWith(key));

/** Where all stretches of a line begin and end together. */
const ends = (marks: readonly Mark[], key: string) => {
  const points = named(marks, key).flatMap((run) => run.points);
  return [points[0], points.at(-1)];
};

describe('steering in space', () => {
  test.each(TRAINING_CARS)('$name: the axis and its pivots stay while the wheel turns', (car) => {
    const before = scene({}, undefined, car);
    for (const steer of [-35, -10, 20, 38]) {
      const after = scene({ steer }, undefined, car);
      for (const key of ['lower-pivot', 'upper-pivot']) {
        const spot = (marks: readonly Mark[]) => marks.find((mark) => mark.key === key);
        expect(spot(after.marks)).toEqual(spot(before.marks));
      }
      // The lower end follows the road down; the line itself stays.
      const [top, was] = [ends(after.marks, 'axis-')[1], ends(before.marks, 'axis-')[1]];
      expect(top?.across).toBeCloseTo(was?.across ?? NaN, 9);
      expect(top?.up).toBeCloseTo(was?.up ?? NaN, 9);
      expect(named(after.marks, 'tyre')[0]?.points).not.toEqual(
        named(before.marks, 'tyre')[0]?.points,
      );
    }
  });

  test('the paper stays where it is', () => {
    expect(scene({ steer: 30, spacer: 20 }).window).toEqual(scene().window);
  });
});

describe('what is hidden', () => {
  const lines = (marks: readonly Mark[], key: string) =>
    new Set(named(marks, key).map(({ line }) => line));

  test('the axis is seen from the middle of the car, and from outboard mostly not', () => {
    const share = (round: number): number => {
      const { marks } = scene({}, { round, above: 12 });
      const count = (line: string): number =>
        named(marks, 'axis-')
          .filter((run) => run.line === line)
          .reduce((sum, run) => sum + run.points.length, 0);
      return count('heavy-chain') / (count('heavy-chain') + count('chain'));
    };
    expect(share(-70)).toBeGreaterThan(share(90) + 0.3);
  });

  test('the axis below the road is a thin centre line from everywhere', () => {
    for (const round of [-170, -60, 0, 45, 90]) {
      const [first] = named(scene({}, { round, above: 25 }).marks, 'axis-');
      expect(first?.line).toBe('chain');
    }
  });

  test('hidden edges are dashed, and what is before the wheel is not', () => {
    expect(lines(scene({}, { round: 90, above: 10 }).marks, 'carrier-')).toContain('hidden');
    expect(lines(scene({}, { round: -60, above: 15 }).marks, 'rod-')).toEqual(new Set(['heavy']));
  });
});

describe('words', () => {
  test('the description has the numbers, with their directions', () => {
    const { description } = scene({ steer: 20, side: 2000 });
    expect(description).toContain('from ahead and the right, 20° above the road');
    expect(description).toContain('the axis meets the road inboard of the contact centre');
    expect(description).toContain('Road-wheel steer 20.0° left');
  });

  test('the viewpoint is named from all sides', () => {
    const from = (round: number, above = 20) => viewpointWords({ round, above });
    expect(from(0)).toBe('from ahead, 20° above the road');
    expect(from(90)).toBe('from the left, 20° above the road');
    expect(from(180)).toBe('from behind, 20° above the road');
    expect(from(-180)).toBe('from behind, 20° above the road');
    expect(from(-90)).toBe('from the right, 20° above the road');
    expect(from(10, 88)).toBe('from above');
  });

  test('pale is what has changed, and no key stands for two things', () => {
    const { marks } = scene({ spacer: 30, side: 2000, weight: 4000, brake: 2000 });
    expect(marks.filter(({ before }) => before).map(({ key }) => key)).toEqual(['tyre-before']);
    const keys = marks.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

test('every label lies on the paper from all round the car', () => {
  for (let round = -180; round < 180; round += 30) {
    for (const above of [5, 30, 60, 90]) {
      const { shapes } = drawn(scene({ steer: 30 }, { round, above }));
      for (const shape of shapes) {
        if (shape.kind !== 'text') continue;
        expect(shape.x).toBeGreaterThan(0);
        expect(shape.x).toBeLessThan(400);
      }
    }
  }
});
