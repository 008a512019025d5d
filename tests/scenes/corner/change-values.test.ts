import { describe, expect, test } from 'vitest';
import { rateHub } from '#core/bearing/hub-rating.ts';
import type { QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { TRAINING_CARS } from '../../training-cars.ts';

describe.each(TRAINING_CARS)('$name', ({ left }) => {
  const value = (id: QuantityId, changes: Partial<Setting> = {}): number =>
    valueOf(id, standing(left, adjusted(AS_IT_STANDS, changes)));
  const gained = (id: QuantityId, changes: Partial<Setting>): number =>
    value(id, changes) - value(id);

  test('takes a spacer once in each lever and at each edge, and twice in the track', () => {
    // A thousandth of the camber’s size: a leaning spin axis carries the wheel a little down.
    for (const id of ['scrubRadius', 'spindleOffset', 'outerEdge', 'innerEdge'] as const)
      expect(gained(id, { spacer: 20 }), id).toBeCloseTo(0.02, 3);
    expect(gained('track', { spacer: 20 })).toBeCloseTo(0.04, 3);
    expect(gained('loadLineOffset', { spacer: 20 })).toBeCloseTo(0.02, 12);
  });

  test('cannot tell a spacer from as much less inset', () => {
    for (const id of ['track', 'outerEdge', 'relativeLife', 'loadLineOffset'] as const)
      expect(value(id, { spacer: 17 }), id).toBeCloseTo(value(id, { inset: -17 }), 12);
  });

  test('has edges that a wider rim moves apart, and levers that it leaves alone', () => {
    expect(gained('outerEdge', { wheelWidth: 25.4 })).toBeCloseTo(0.0127, 4);
    expect(gained('innerEdge', { wheelWidth: 25.4 })).toBeCloseTo(-0.0127, 4);
    for (const id of ['scrubRadius', 'spindleOffset', 'track', 'relativeLife'] as const)
      expect(gained(id, { wheelWidth: 25.4 }), id).toBe(0);
  });

  test('has a bearing that lasts as long as it does while nothing is changed', () => {
    expect(value('relativeLife')).toBe(1);
    expect(value('relativeLife', { weight: 5000, brake: 3000, steer: 20 })).toBe(1);
  });

  test('rates the moved load line as the core does', () => {
    const { hub, duty } = left.bearing;
    const radii = {
      loadedRadius: left.corner.loadedRadius,
      rollingRadius: left.rollingRadius,
    };
    const moved = { ...hub, loadLineOffset: hub.loadLineOffset + 0.03 };
    const expected = rateHub(moved, duty, radii).life / rateHub(hub, duty, radii).life;
    expect(value('relativeLife', { spacer: 30 })).toBeCloseTo(expected, 12);
  });
});
