import { describe, expect, test } from 'vitest';
import { solve } from '#core/document/solve.ts';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { LifeQuantity } from '#core/life-quantities.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { CAR_FILES, TRAINING_CARS, trainingCar } from '../../training-cars.ts';

const { left } = trainingCar('siskin');

const value = (id: LifeQuantity, changes: Partial<Setting> = {}, model = left): number =>
  valueOf(id, standing(model, adjusted(AS_IT_STANDS, changes)));

describe.each(TRAINING_CARS)('the bearing of the $id', ({ id, left: model }) => {
  test('has the lives that its document is solved to, with and without a change', () => {
    const file = [...CAR_FILES.values()].find((one) => (one as { id: string }).id === id);
    const document = (file as { left: object }).left;
    for (const spacer of [0, 20]) {
      const read = readCornerDocument({ ...document, change: { spacer_mm: spacer } });
      if (!read.ok) throw new Error('a training car does not read');
      const solved = solve(read.value);
      if (!solved.ok || !solved.value.hub) throw new Error('a training car does not solve');
      const { hub } = solved.value;
      const ours = (of: LifeQuantity) => value(of, { spacer }, model);
      expect(ours('hubLife') / 1e6).toBeCloseTo(hub.L10_Mrev, 6);
      expect(ours('outboardLife') / 1e6).toBeCloseTo(hub.outboardL10_Mrev, 6);
      expect(ours('inboardLife') / 1e6).toBeCloseTo(hub.inboardL10_Mrev, 6);
      expect(ours('hubDistance') / 1000).toBeCloseTo(hub.L10_km, 3);
    }
  });

  test('is rated for nearly the same at any pace of driving that has no bends', () => {
    const straight = { outerBends: -5, innerBends: -5 };
    expect(value('bendShare', straight, model)).toBe(0);
    expect(value('inboardBendFatigue', straight, model)).toBe(0);
    expect(value('hubLife', { ...straight, pace: 40 }, model)).toBeCloseTo(
      value('hubLife', straight, model),
      3,
    );
  });
});

describe('relative life', () => {
  test('is the whole where nothing is changed, however the car is driven', () => {
    expect(value('relativeLife')).toBe(1);
    expect(value('relativeLife', { outerBends: 10, rough: 20, pace: -30 })).toBe(1);
  });

  test('is an eighth under twice the load with balls, and a tenth with rollers', () => {
    expect(value('relativeLife', { laden: 100 })).toBeCloseTo(1 / 8, 12);
    const rollers = value('relativeLife', { laden: 100 }, trainingCar('pelican').left);
    expect(rollers).toBeCloseTo(0.5 ** (10 / 3), 12);
  });

  test('falls with a spacer on the motorway, and rises with the same spacer in brisk bends', () => {
    expect(value('relativeLife', { outerBends: -5, innerBends: -5, spacer: 20 })).toBeLessThan(0.5);
    expect(value('relativeLife', { spacer: 20 })).toBeGreaterThan(1);
  });

  test('is the same for a spacer as for as much less inset', () => {
    expect(value('relativeLife', { spacer: 15 })).toBeCloseTo(
      value('relativeLife', { inset: -15 }),
      12,
    );
  });
});

test('a surer promise is a shorter one', () => {
  const [ninety, more, most] = [value('hubLife'), value('life95'), value('life99')];
  expect(more / ninety).toBeCloseTo(0.64, 2);
  expect(most / ninety).toBeCloseTo(0.25, 2);
});
