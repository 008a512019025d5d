import { describe, expect, test } from 'vitest';
import type { QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';

const valueAt = (name: string, id: QuantityId, changes: Partial<Setting> = {}): number =>
  valueOf(id, standing(modelNamed(name), adjusted(AS_IT_STANDS, changes)));

describe('the wheel bearing of a corner', () => {
  test('stands wider than its rows: 25.6 mm and 52 mm · tan 35° make 62 mm', () => {
    const spread =
      valueAt('linnet, left', 'rowPitch') +
      valueAt('linnet, left', 'pitchDiameter') * Math.tan((35 * Math.PI) / 180);
    expect(spread).toBeCloseTo(0.062, 12);
    expect(valueAt('linnet, left', 'rowPitch')).toBeCloseTo(0.0256, 4);
  });

  test('has its load line carried outboard by a spacer and inboard by more inset', () => {
    expect(valueAt('linnet, left', 'loadLineOffset', { spacer: 20 })).toBeCloseTo(0.024, 12);
    expect(valueAt('linnet, left', 'loadLineOffset', { inset: 20 })).toBeCloseTo(-0.016, 12);
  });

  test('carries the same on both sides of the car in mirrored bends', () => {
    for (const id of ['outboardRadial', 'inboardThrust', 'loadCrossing', 'sideTilt'] as const) {
      const left = valueAt('siskin, left', id, { weight: 5800, side: -2600 });
      const right = valueAt('siskin, right', id, { weight: 5800, side: 2600 });
      expect(left).toBeCloseTo(right, 9);
    }
  });

  test('is tipped by wheel load and side force together', () => {
    const at = (id: QuantityId): number =>
      valueAt('siskin, left', id, { weight: 5800, side: -2600 });
    expect(at('loadTilt')).toBeCloseTo(5800 * 0.006, 9);
    expect(at('sideTilt')).toBeCloseTo(-2600 * 0.293, 9);
    expect(at('tilt')).toBeCloseTo(at('loadTilt') + at('sideTilt'), 9);
    expect(at('outboardRadial') - at('inboardRadial')).toBeCloseTo((2 * at('tilt')) / 0.066, 6);
  });

  test('without load has no line of action, and the load line stands in for it', () => {
    expect(valueAt('siskin, left', 'loadCrossing', { side: 1000 })).toBeCloseTo(0.006, 12);
    expect(valueAt('siskin, left', 'outboardRadial')).toBe(0);
  });
});
