import { describe, expect, test } from 'vitest';
import { dutyDrawing } from '#scenes/life/duty-drawing.ts';
import { lifeDrawing, type LifeLook } from '#scenes/life/life-drawing.ts';
import { LIFE_OVER, type LifeOver } from '#scenes/life/life-over.ts';
import { livesAt, livesOver } from '#scenes/life/lives.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import type { Shape } from '#scenes/paper/shapes.ts';
import { PARAMETERS } from '#scenes/parameters.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { TRAINING_CARS, trainingCar } from '../../training-cars.ts';

const { left } = trainingCar('siskin');
const LOOK: LifeLook = { over: 'spacer', units: 'metric', hidden: false };
const SETTINGS: readonly Partial<Setting>[] = [
  {},
  { spacer: 60, laden: 100 },
  { inset: 40, outerBends: -5, innerBends: -5 },
  { outerBends: 25, innerBends: 25, rough: 40, pace: 40 },
  { radius: -40, spacer: 20, pace: -60 },
];

const drawn = (changes: Partial<Setting> = {}, look: Partial<LifeLook> = {}, model = left) =>
  lifeDrawing(model, adjusted(AS_IT_STANDS, changes), { ...LOOK, ...look });

const keys = (shapes: readonly Shape[]): readonly string[] => shapes.map(({ key }) => key);

describe('lives over the range of a chart', () => {
  test('run from end to end, outboard to the right', () => {
    const spacer = livesOver(left, AS_IT_STANDS, 'spacer');
    expect([spacer[0]?.at, spacer.at(-1)?.at]).toEqual([0, PARAMETERS.spacer.most / 1000]);
    const places = livesOver(left, AS_IT_STANDS, 'load-line').map(({ at }) => at);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeCloseTo(left.bearing.hub.loadLineOffset - 0.04, 12);
    expect(places.at(-1)).toBeCloseTo(left.bearing.hub.loadLineOffset + 0.06, 12);
  });

  test('have both rows together below each of them, and the whole where nothing is changed', () => {
    for (const { outboard, inboard, both } of livesOver(left, AS_IT_STANDS, 'load-line')) {
      expect(both).toBeLessThan(Math.min(outboard, inboard));
    }
    expect(livesAt(left, AS_IT_STANDS, 'spacer')).toMatchObject({ at: 0, both: 1 });
  });

  test('say where the loads are beyond what the life equation is for', () => {
    const heavy = adjusted(AS_IT_STANDS, { laden: 100, pace: 40, outerBends: 25, inset: 40 });
    expect(livesAt(left, heavy, 'spacer').withinScope).toBe(false);
    expect(livesAt(left, AS_IT_STANDS, 'spacer').withinScope).toBe(true);
  });
});

describe('a chart of lives', () => {
  test('has its words on the paper, keys of their own, and numbers only, in any state', () => {
    for (const { left: model } of TRAINING_CARS) {
      for (const changes of SETTINGS) {
        for (const over of Object.keys(LIFE_OVER) as LifeOver[]) {
          for (const units of ['metric', 'us'] as const) {
            const { shapes, frame } = drawn(changes, { over, units, guess: 0.5 }, model);
            expect(new Set(keys(shapes)).size).toBe(shapes.length);
            expect(JSON.stringify(shapes)).not.toMatch(/NaN|Infinity|null|\.\d{3}/);
            expectOnPaper(shapes, frame);
          }
        }
      }
    }
  });

  test('can be moved by its marker, which stands on the heavy curve', () => {
    const { grips, shapes } = drawn({ spacer: 20 });
    expect(grips.map(({ handle }) => handle.parameter)).toEqual(['spacer']);
    const dot = shapes.find(({ key }) => key === 'here-both');
    const [, x = NaN, y = NaN] =
      /^M(\S+) (\S+)a/.exec(dot?.kind === 'path' ? dot.d : '')?.map(Number) ?? [];
    expect(x + 4.5).toBeCloseTo(grips[0]?.x ?? NaN, 1);
    expect(y).toBeCloseTo(grips[0]?.y ?? NaN, 1);
  });

  test('follows a finger: as far on paper as the load line goes', () => {
    for (const [over, changes, way] of [
      ['spacer', { spacer: 10 }, 10],
      ['load-line', { inset: -10 }, 10],
      ['load-line', { inset: 10 }, -10],
    ] as const) {
      const [from, to] = [drawn({}, { over }), drawn(changes, { over })];
      const moved = (to.grips[0]?.x ?? NaN) - (from.grips[0]?.x ?? NaN);
      expect(moved).toBeCloseTo(way * from.frame.scale, 1);
    }
  });

  test('keeps its curves to itself until the prediction is made', () => {
    const { shapes, description } = drawn({}, { hidden: true });
    expect(keys(shapes).filter((key) => key.startsWith('curve'))).toEqual([]);
    expect(description).not.toContain('the most');
    expect(keys(drawn().shapes)).toContain('curve-both');
  });

  test('says in words where it stands and where the most is', () => {
    const { description } = drawn({ spacer: 20 });
    expect(description.replaceAll('\u202f', ' ')).toBe(
      'With a spacer of 20.0 mm the outboard row has 197.7 %, the inboard row 220.8 % and both together ' +
        '111.8 % of the rating life that both rows have before the change. Both together go from 100.0 % at ' +
        '0.0 mm to 62.6 % at 60.0 mm, with the most, 111.8 %, at 19.8 mm.',
    );
  });

  test('keeps a guess beside what it came to', () => {
    expect(keys(drawn({}, { guess: 0.4 }).shapes)).toContain('guess');
    expect(keys(drawn().shapes)).not.toContain('guess');
  });
});

describe('the bars of a duty cycle', () => {
  const bars = (changes: Partial<Setting>, hidden = false, model = left) =>
    dutyDrawing(model, adjusted(AS_IT_STANDS, changes), hidden);

  test('have their words on the paper, keys of their own, and numbers only, in any state', () => {
    for (const { left: model } of TRAINING_CARS) {
      for (const changes of SETTINGS) {
        const { shapes, frame } = bars(changes, false, model);
        expect(new Set(keys(shapes)).size).toBe(shapes.length);
        expect(JSON.stringify(shapes)).not.toMatch(/NaN|Infinity|null|\.\d{3}/);
        expectOnPaper(shapes, frame);
      }
    }
  });

  test('show the way alone until the prediction is made', () => {
    expect(keys(bars({}, true).shapes)).not.toContain('outboard-frame');
    expect(keys(bars({}).shapes)).toContain('outboard-frame');
  });

  test('are told in words', () => {
    expect(bars({}).description.replaceAll('\u202f', ' ')).toMatch(
      /^Of the distance: straight 90.0 %, rough 0.0 %, wheel inside 5.0 %, wheel outside 5.0 %\. Of the fatigue of the outboard row: /,
    );
  });
});

function expectOnPaper(
  shapes: readonly Shape[],
  frame: { readonly width: number; readonly height: number },
): void {
  for (const shape of shapes) {
    if (shape.kind !== 'text') continue;
    const half = textWidth(shape.text) / 2;
    expect(shape.x - half, shape.text).toBeGreaterThanOrEqual(-0.01);
    expect(shape.x + half, shape.text).toBeLessThanOrEqual(frame.width + 0.01);
    expect(shape.y, shape.text).toBeGreaterThan(6);
    expect(shape.y, shape.text).toBeLessThanOrEqual(frame.height - 6);
  }
}
