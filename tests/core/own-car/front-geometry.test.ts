import { describe, expect, test } from 'vitest';
import { spinAxis } from '#core/corner.ts';
import { camberOf, measure } from '#core/geometry.ts';
import { modelOf, RESULT_IDS } from '#core/own-car/front-geometry.ts';
import { measurementsOf, readingsOf } from '#core/own-car/readings-of.ts';
import { isReadingId, READING_IDS, USUAL_DOUBT } from '#core/own-car/readings.ts';
import { combined } from '#core/uncertainty/linear.ts';
import { TRAINING_CARS } from '../../training-cars.ts';

describe.each(
  TRAINING_CARS.flatMap(({ name, left, right }) => [
    { name: `${name}, left`, model: left },
    { name: `${name}, right`, model: right },
  ]),
)('$name', ({ model: { corner, anatomy } }) => {
  const straight = {
    ...corner,
    spin: spinAxis(corner.side, camberOf(corner.spin), 0),
  };
  const readings = readingsOf(straight, anatomy.rimWidth / 2000);
  const values = READING_IDS.map((id) => readings[id]);

  test('measured from the front without a mistake has the geometry that the core computes in space', () => {
    const geometry = measure(straight);
    for (const id of RESULT_IDS) expect(modelOf(id)(values)).toBeCloseTo(geometry[id], 12);
  });

  test('can be measured to a few millimetres, and not to one', () => {
    const inputs = measurementsOf(readings, USUAL_DOUBT);
    for (const id of ['scrubRadius', 'spindleOffset'] as const) {
      const { standard } = combined(modelOf(id), inputs);
      expect(standard).toBeGreaterThan(0.001);
      expect(standard).toBeLessThan(0.006);
    }
  });
});

test('readings have names', () => {
  expect(isReadingId('lowerIn')).toBe(true);
  expect(isReadingId('toString')).toBe(false);
});
