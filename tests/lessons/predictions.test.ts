import { describe, expect, test } from 'vitest';
import type { CornerModel } from '#core/car/car.ts';
import { isQuantityId, quantity } from '#core/quantities.ts';
import { outcomesOf } from '../../src/lib/lesson/outcomes.ts';
import {
  isPredictionSlip,
  slipValue,
  type PredictionSlipId,
} from '../../src/lib/lesson/prediction-slips.ts';
import { predictionTolerance } from '../../src/lib/lesson/prediction-tolerance.ts';
import { writtenSetting } from '../../src/lib/lesson/written-setting.ts';
import { trainingCar } from '../training-cars.ts';
import { LESSON_FILES } from './lesson-files.ts';
import { tagsNamed, wordsIn, type Tag } from './tags.ts';

/** Tolerances between the answer and a wrong road, and between two wrong roads. */
const FROM_ANSWER = 4;
const FROM_SLIP = 2;

const PREDICTIONS = LESSON_FILES.flatMap((file) => {
  const car = trainingCar(/^car: (.+)$/m.exec(file.text)?.[1] ?? '');
  return tagsNamed(file, 'Predict').map((tag) => ({ ...asked(tag, car.left), ...tag }));
});

describe.each(PREDICTIONS)('the prediction at $place', ({ outcomes, slips, tolerance }) => {
  const ends = slips.map((id) => [id, slipValue(id, outcomes)] as const);

  test('has a wrong road or more', () => {
    expect(slips.length).toBeGreaterThan(0);
  });

  test('has wrong roads that end well apart from the answer', () => {
    const near = ends.filter(([, end]) => Math.abs(end - outcomes.after) < FROM_ANSWER * tolerance);
    expect(near.map(([id]) => id)).toEqual([]);
  });

  test('has wrong roads that end apart from one another', () => {
    const alike = ends.filter(([, end], i) =>
      ends.slice(0, i).some(([, other]) => Math.abs(end - other) < FROM_SLIP * tolerance),
    );
    expect(alike.map(([id]) => id)).toEqual([]);
  });
});

test('a guess is close within a fiftieth, and never has to be closer than the figure can be read', () => {
  expect(predictionTolerance('length', -0.2)).toBeCloseTo(0.004, 12);
  expect(predictionTolerance('length', 0)).toBe(0.0006);
  expect(predictionTolerance('angle', 0.01)).toBe(0.003);
  expect(predictionTolerance('moment', 100)).toBeCloseTo(2, 12);
});

/** @throws Error for a prediction of nothing known */
function asked(tag: Tag, model: CornerModel) {
  const of = tag.attributes['of'] ?? '';
  if (!isQuantityId(of)) throw new Error(`${tag.place}: ${of} is no quantity`);
  const { from = '', set = '' } = tag.attributes;
  const outcomes = outcomesOf(of, model, writtenSetting(from), writtenSetting(set));
  const slips: readonly PredictionSlipId[] = wordsIn(tag, 'slips').map((id) => {
    if (isPredictionSlip(id)) return id;
    throw new Error(`${tag.place}: ${id} is no known wrong road`);
  });
  return { outcomes, slips, tolerance: predictionTolerance(quantity(of).kind, outcomes.after) };
}
