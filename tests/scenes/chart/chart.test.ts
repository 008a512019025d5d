import { describe, expect, test, vi } from 'vitest';
import { degrees } from '#core/angle.ts';
import { QUANTITIES, type QuantityId } from '#core/quantities.ts';
import { chartDrawing, type ChartDrawing } from '#scenes/chart/chart-drawing.ts';
import { curveOf, pointAt } from '#scenes/chart/curve.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import { PARAMETER_IDS, PARAMETERS, type ParameterId } from '#scenes/parameters.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { trainingCar } from '../../training-cars.ts';

/** Every quantity over every parameter is a lot of charts. */
vi.setConfig({ testTimeout: 600_000 });

const { left } = trainingCar('siskin');
const IDS = Object.keys(QUANTITIES) as readonly QuantityId[];

function chart(of: QuantityId, over: ParameterId, changes: Partial<Setting> = {}): ChartDrawing {
  const setting = adjusted(AS_IT_STANDS, changes);
  return chartDrawing(curveOf(left, setting, of, over, 'metric'), left, setting);
}

describe('a curve', () => {
  const { points } = curveOf(left, AS_IT_STANDS, 'camber', 'steer', 'metric');

  test('runs over the whole range of its parameter', () => {
    expect([points[0]?.x, points.at(-1)?.x]).toEqual([
      PARAMETERS.steer.least,
      PARAMETERS.steer.most,
    ]);
  });

  test('is at every point what the corner is there', () => {
    for (const { x, y } of points) {
      const { geometry } = standing(left, { ...AS_IT_STANDS, steer: x });
      expect(y).toBeCloseTo(degrees(geometry.camber), 9);
    }
  });

  test('does not ask where its own parameter is, but where the others are', () => {
    const at = (changes: Partial<Setting>) =>
      curveOf(left, adjusted(AS_IT_STANDS, changes), 'camber', 'steer', 'metric').points;
    expect(at({ steer: 30 })).toEqual(points);
    expect(at({ camberAtTop: -2 })).not.toEqual(points);
  });

  test('is in the units that are shown', () => {
    const inInches = pointAt(
      left,
      adjusted(AS_IT_STANDS, { spacer: 50.8 }),
      'scrubRadius',
      'spacer',
      'us',
    );
    expect(inInches.x).toBeCloseTo(2, 9);
    const there = standing(left, adjusted(AS_IT_STANDS, { spacer: 50.8 }));
    expect(inInches.y).toBeCloseTo(valueOf('scrubRadius', there) / 0.0254, 9);
  });
});

describe('a chart', () => {
  test('marks the corner on its curve', () => {
    const { shapes } = chart('camber', 'steer', { steer: PARAMETERS.steer.most });
    const [end] = /[^,L C]+,[^,L C]+$/.exec(pathOf(shapes, 'curve')) ?? [];
    const [x = NaN, y = NaN] = (end ?? '').split(',').map(Number);
    const [, left = NaN, middle = NaN] =
      /^M(\S+) (\S+)a/.exec(pathOf(shapes, 'here'))?.map(Number) ?? [];
    expect(left + 4.5).toBeCloseTo(x, 1);
    expect(middle).toBeCloseTo(y, 1);
  });

  test('says where its curve begins and ends, and where the corner stands', () => {
    const { description } = chart('scrubRadius', 'spacer', { spacer: 20 });
    expect(description.replaceAll('\u202f', ' ')).toBe(
      'Over the range of spacer it goes from 9.7 mm at 0 to 69.8 mm at 60. ' +
        'With spacer 20.0 mm thick: scrub radius 29.7 mm inboard.',
    );
  });

  test('says which way is plus only where there is a minus', () => {
    const below = (over: ParameterId): string | undefined =>
      chart('scrubRadius', over).shapes.flatMap((shape) =>
        shape.kind === 'text' && shape.key === 'x-name' ? [shape.text] : [],
      )[0];
    expect(below('spacer')).toBe('spacer, mm');
    expect(below('inset')).toBe('inset, change, mm (+ is more inset)');
  });

  test('shows what is usual where that is known', () => {
    const keys = (of: QuantityId): readonly string[] =>
      chart(of, 'spacer').shapes.map(({ key }) => key);
    expect(keys('scrubRadius')).toContain('band');
    expect(keys('loadedRadius')).not.toContain('band');
  });

  test('of anything over anything has its words on the paper, keys of their own, and numbers only', () => {
    for (const of of IDS) {
      for (const over of PARAMETER_IDS) {
        const { shapes, frame } = chart(of, over, { brake: 2000, weight: 4000 });
        const about = `${of} over ${over}`;
        const keys = shapes.map(({ key }) => key);
        expect(new Set(keys).size, about).toBe(keys.length);
        expect(JSON.stringify(shapes), about).not.toMatch(/NaN|Infinity|null|\.\d{3}/);
        for (const shape of shapes) {
          if (shape.kind !== 'text') continue;
          const half = textWidth(shape.text) / 2;
          expect(shape.x - half, `${about}: ${shape.text}`).toBeGreaterThanOrEqual(0);
          expect(shape.x + half, `${about}: ${shape.text}`).toBeLessThanOrEqual(frame.width);
          expect(shape.y, `${about}: ${shape.text}`).toBeLessThanOrEqual(frame.height - 6);
        }
      }
    }
  });
});

function pathOf(shapes: ChartDrawing['shapes'], key: string): string {
  const shape = shapes.find((one) => one.key === key);
  return shape?.kind === 'path' ? shape.d : '';
}
