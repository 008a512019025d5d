import { describe, expect, test } from 'vitest';
import { asRead } from '#core/own-car/as-read.ts';
import { findingOf, type Finding } from '#core/own-car/findings.ts';
import { RESULT_IDS, type ResultId } from '#core/own-car/front-geometry.ts';
import { readingsOf } from '#core/own-car/readings-of.ts';
import { READING_IDS, USUAL_DOUBT, type Readings } from '#core/own-car/readings.ts';
import { measureScene, type MeasureLook } from '#scenes/measure/measure-scene.ts';
import { resultsDrawing, type Found } from '#scenes/measure/results-drawing.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import { TRAINING_CARS } from '../../training-cars.ts';

const MODELS = TRAINING_CARS.flatMap(({ name, left, right }) => [
  { name: `${name}, left`, model: left },
  { name: `${name}, right`, model: right },
]);

describe.each(MODELS)('measuring the $name', ({ model }) => {
  const readings = asRead(readingsOf(model.corner, model.anatomy.rimWidth / 2000));
  const look = (changes: Partial<MeasureLook> = {}): MeasureLook => ({
    readings,
    doubts: USUAL_DOUBT,
    reading: 'lowerIn',
    units: 'metric',
    closeness: 'whole',
    ...changes,
  });
  const widthAt = (doubts: Readings, end: 'floor' | 'pivots'): number => {
    const band = measureScene(model, look({ doubts })).marks.find(
      ({ key }) => key === 'axis-doubt',
    );
    if (band?.kind !== 'path') throw new Error('there is no band');
    const half = band.points.length / 2;
    const widths = band.points
      .slice(0, half)
      .map((p, i) => Math.abs(p.across - (band.points.at(-1 - i)?.across ?? NaN)));
    return end === 'floor' ? (widths[0] ?? NaN) : Math.min(...widths);
  };

  test('shows every reading with its ±, on the paper', () => {
    for (const reading of READING_IDS) {
      const scene = measureScene(model, look({ reading }));
      expect(scene.marks.filter(({ key }) => key === 'reading')).toHaveLength(1);
      const { shapes } = drawn(scene);
      expect(shapes.find(({ key }) => key === 'reading-text')).toMatchObject({
        text: expect.stringContaining(' ± ') as string,
      });
    }
  });

  test('has the axis surer between the pivots than at the floor', () => {
    expect(widthAt(USUAL_DOUBT, 'floor')).toBeGreaterThan(1.2 * widthAt(USUAL_DOUBT, 'pivots'));
  });

  test('has a narrower band with a better lower mark', () => {
    const better = { ...USUAL_DOUBT, lowerIn: 0.0005 };
    expect(widthAt(better, 'floor')).toBeLessThan(widthAt(USUAL_DOUBT, 'floor'));
  });
});

describe('the results', () => {
  const finding = (value: number, plusMinus: number): Finding => ({
    value,
    standard: plusMinus / 2,
    contributions: [],
    shares: [],
    plusMinus,
    chance: 1,
  });
  const found = (values: Readonly<Record<ResultId, number>>): Found =>
    Object.fromEntries(
      RESULT_IDS.map((id) => {
        const [value, plusMinus] = [values[id], 0.005];
        const spread = {
          mean: value,
          standard: plusMinus / 2,
          least: value - plusMinus,
          most: value + plusMinus,
        };
        return [id, { finding: finding(value, plusMinus), spread }];
      }),
    ) as Found;
  const values = { scrubRadius: 0.004, spindleOffset: 0.07, inclination: 0.2 };

  test('mark nought where it is on the scale, and nowhere else', () => {
    const keys = resultsDrawing(found(values), values, 'metric').shapes.map(({ key }) => key);
    expect(keys).toContain('scrubRadius-nought');
    expect(keys).not.toContain('spindleOffset-nought');
  });

  test('say their signs in words', () => {
    const { description } = resultsDrawing(
      found({ ...values, scrubRadius: -0.004 }),
      values,
      'metric',
    );
    expect(description).toContain('4.0\u202fmm outboard');
  });

  test('stay on the paper however far a reading is moved', () => {
    for (const off of [-0.2, -0.02, 0, 0.03, 0.5]) {
      const moved = { ...values, scrubRadius: off };
      const { shapes, frame } = resultsDrawing(found(moved), values, 'metric');
      for (const shape of shapes) {
        if (shape.kind === 'text') {
          const half = textWidth(shape.text) / 2;
          expect(shape.x - half, shape.text).toBeGreaterThanOrEqual(-2);
          expect(shape.x + half, shape.text).toBeLessThanOrEqual(frame.width + 2);
        } else expect(shape.d).not.toContain('NaN');
      }
    }
  });
});

test('what a car is measured to is what the core says of the same readings', () => {
  const { corner, anatomy } = TRAINING_CARS[0]?.left ?? MODELS[0]?.model ?? never();
  const readings = readingsOf(corner, anatomy.rimWidth / 2000);
  const { value, plusMinus, standard } = findingOf('spindleOffset', readings, USUAL_DOUBT);
  expect(value).toBeGreaterThan(0.02);
  expect(plusMinus).toBe(2 * standard);
});

function never(): never {
  throw new Error('there are training cars');
}
