import { describe, expect, test } from 'vitest';
import { engagement } from '#core/fastening/engagement.ts';
import { standing } from '#scenes/corner/standing.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { clampDrawing } from '#scenes/thread/clamp-drawing.ts';
import { hatching } from '#scenes/thread/hatching.ts';
import { jointLengths } from '#scenes/thread/joint-lengths.ts';
import { threadScene } from '#scenes/thread/thread-scene.ts';
import { TRAINING_CARS, trainingCar } from '../../training-cars.ts';

const scene = (car: string, spacer: number) =>
  threadScene(
    trainingCar(car).left,
    { ...AS_IT_STANDS, spacer },
    { handles: ['spacer'], units: 'metric' },
  );
const keys = (car: string, spacer: number): readonly string[] =>
  scene(car, spacer).marks.map(({ key }) => key);

describe.each(TRAINING_CARS.map(({ id, left }) => ({ id, fixing: left.fixing })))(
  'a fastener of the $id',
  ({ id, fixing }) => {
    const mm = (spacer: number) => jointLengths(fixing, spacer / 1000);

    test('holds over one diameter or nearly so without a spacer', () => {
      expect(engagement(fixing, 0)).toBeGreaterThanOrEqual(fixing.thread.diameter);
    });

    test('is drawn engaged for as long as the core says', () => {
      for (const spacer of [0, 3, 8, 14]) {
        const { from, to } = mm(spacer);
        expect(to - from).toBeCloseTo(1000 * engagement(fixing, spacer / 1000), 9);
      }
    });

    test('engages where both threads are: between the tip and the counterpart’s ends', () => {
      for (const spacer of [0, 5, 10]) {
        const { from, to, tip, seat, hubBack } = mm(spacer);
        if (fixing.fastener === 'bolt') {
          expect(from).toBeCloseTo(Math.max(tip, hubBack), 9);
          expect(to).toBe(0);
        } else {
          expect(from).toBe(seat);
          expect(to).toBeCloseTo(Math.min(tip, seat + 1000 * fixing.depth), 9);
        }
      }
    });

    test('says in words and by a dashed line when it falls short, and only then', () => {
      for (let spacer = 0; spacer <= 60; spacer += 1) {
        const { missing } = mm(spacer);
        const { description, marks } = scene(id, spacer);
        const dashed = marks.find(({ key }) => key === 'missing');
        expect(dashed !== undefined, `${spacer}`).toBe(missing > 0);
        if (missing > 0) {
          expect(dashed).toMatchObject({ line: 'hidden' });
          expect(description).toMatch(/short of one diameter|No thread holds/);
        } else {
          expect(description).toContain('is reached');
        }
      }
    });

    test('keeps its handle and all of its words on the paper, whatever the spacer', () => {
      for (let spacer = 0; spacer <= 60; spacer += 4) {
        const { shapes, grips, frame } = drawn(scene(id, spacer));
        expect(grips.map(({ key }) => key)).toEqual(['handle-spacer']);
        for (const shape of shapes) {
          if (shape.kind !== 'text') continue;
          const half = textWidth(shape.text) / 2;
          expect(shape.x - half, shape.text).toBeGreaterThanOrEqual(0);
          expect(shape.x + half, shape.text).toBeLessThanOrEqual(frame.width);
        }
        const all = shapes.map(({ key }) => key);
        expect(new Set(all).size).toBe(all.length);
      }
    });
  },
);

test('the wheel stands pale where it was as soon as a spacer is in', () => {
  expect(keys('siskin', 0)).not.toContain('wheel-before-above');
  expect(keys('siskin', 5)).toContain('wheel-before-above');
});

test('a spacer is as wide as it is thick', () => {
  const spacer = scene('siskin', 7).marks.find(({ key }) => key === 'spacer-0');
  expect(spacer).toMatchObject({ kind: 'path' });
  if (spacer?.kind !== 'path') return;
  const across = spacer.points.map((p) => p.across);
  expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(7, 9);
});

test('hatching stays within its box', () => {
  for (const rising of [true, false]) {
    const marks = hatching({ left: -3, right: 20, bottom: 2, top: 9 }, 'h', 'part', rising);
    expect(marks.length).toBeGreaterThan(5);
    for (const mark of marks) {
      if (mark.kind !== 'path') throw new Error('hatching is made of lines');
      for (const { across, up } of mark.points) {
        expect(across).toBeGreaterThanOrEqual(-3);
        expect(across).toBeLessThanOrEqual(20);
        expect(up).toBeGreaterThanOrEqual(2 - 1e-9);
        expect(up).toBeLessThanOrEqual(9 + 1e-9);
      }
    }
  }
});

describe('the clamp loads', () => {
  const clamp = (changes: Partial<Setting>) =>
    clampDrawing(standing(trainingCar('siskin').left, adjusted(AS_IT_STANDS, changes)), 'metric');
  const drawnKeys = (changes: Partial<Setting>) => clamp(changes).shapes.map(({ key }) => key);

  test('show what is needed only under a load', () => {
    expect(drawnKeys({})).not.toContain('needed');
    expect(drawnKeys({ brake: 4000, weight: 5000 })).toContain('needed');
    expect(clamp({}).description).toContain('No load');
  });

  test('say when the weakest is short, and dash what is missing', () => {
    expect(drawnKeys({ brake: 4000, weight: 5000 })).not.toContain('wrench-short');
    const half = { brake: 4000, weight: 5000, tightening: -60 };
    expect(drawnKeys(half)).toContain('wrench-short');
    expect(clamp(half).description).toContain('The weakest fastener is short');
  });

  test('stay on the paper at every load and torque', () => {
    for (const brake of [0, 3000, 6000]) {
      for (const tightening of [-100, 0, 60]) {
        const { shapes, frame } = clamp({ brake, weight: 8000, tightening });
        for (const shape of shapes) {
          if (shape.kind !== 'text') continue;
          const half = textWidth(shape.text) / 2;
          expect(shape.x - half, shape.text).toBeGreaterThanOrEqual(-1);
          expect(shape.x + half, shape.text).toBeLessThanOrEqual(frame.width + 1);
        }
      }
    }
  });
});
