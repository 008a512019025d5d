import { describe, expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { actionOf } from '#core/load-cases.ts';
import type { QuantityId } from '#core/quantities.ts';
import { AXLE_CASES } from '#scenes/axle/axle-cases.ts';
import { AXLE_PAPER, axleUnit, axleWindow } from '#scenes/axle/axle-paper.ts';
import { axleScene, type AxleLook } from '#scenes/axle/axle-scene.ts';
import { LEVER_SCALE } from '#scenes/axle/moment-tile.ts';
import { dragged } from '#scenes/corner/handles.ts';
import type { Mark } from '#scenes/marks.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { markOf } from '../corner/marks-of.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';

const MEASURES: readonly QuantityId[] = [
  'leftMoment',
  'rightMoment',
  'leftRodForce',
  'rightRodForce',
  'netRackForce',
  'yawMoment',
];

const lookAt = (changes: Partial<AxleLook> = {}): AxleLook => ({
  which: 'brake',
  measures: MEASURES,
  handles: [],
  units: 'metric',
  ...changes,
});

const at = (changes: Partial<Setting>): Setting => adjusted(AS_IT_STANDS, changes);
const sceneOf = (changes: Partial<Setting>, look = lookAt(), car = 'linnet, left') =>
  axleScene(modelNamed(car), at(changes), look);
const marksOf = (...of: Parameters<typeof sceneOf>): readonly Mark[] => sceneOf(...of).marks;

const runOf = (marks: readonly Mark[], key: string) => {
  const { from, to } = markOf(marks, 'arrow', key);
  return { across: to.across - from.across, up: to.up - from.up };
};

/** Width and height of a moment’s area, in millimetres of the drawing; the width is positive toward the paper’s right. */
function sizeOf(marks: readonly Mark[], key: string) {
  const [nearForce, farForce, farAxis] = markOf(marks, 'path', key).points;
  if (!nearForce || !farForce || !farAxis) throw new Error('an area has four corners');
  return { toAxis: farAxis.across - farForce.across, away: farForce.up - nearForce.up };
}

describe('the area of a moment', () => {
  test.each(MODEL_NAMES)('is the moment, to scale: %s', (car) => {
    const { corner } = modelNamed(car);
    const marks = marksOf({ leftBrake: 4000, rightBrake: 1500 }, lookAt(), car);
    const { toAxis, away } = sizeOf(marks, `${corner.side}-tile`);
    const force = corner.side === 'left' ? 4000 : 1500;
    const moment = momentOf(corner, actionOf(corner, { kind: 'brake-on-carrier', force }));
    const unit = axleUnit(axleWindow(modelNamed(car)));
    const area = Math.abs(toAxis * away);
    expect(area).toBeCloseTo(
      1000 * Math.abs(moment) * LEVER_SCALE * AXLE_CASES.brake.scale * unit,
      6,
    );
  });

  test('lies on the side of the tyre’s middle that the axis is on', () => {
    const negative = marksOf({ leftBrake: 4000, rightBrake: 4000 });
    expect(sizeOf(negative, 'left-tile').toAxis).toBeGreaterThan(0);
    expect(sizeOf(negative, 'right-tile').toAxis).toBeLessThan(0);
    const positive = marksOf({ leftBrake: 4000, rightBrake: 4000, spacer: 20 });
    expect(sizeOf(positive, 'left-tile').toAxis).toBeLessThan(0);
    expect(sizeOf(positive, 'right-tile').toAxis).toBeGreaterThan(0);
  });

  test('keeps out of the way of its force', () => {
    const braked = marksOf({ leftBrake: 4000 });
    expect(runOf(braked, 'left-force').up).toBeGreaterThan(0);
    expect(sizeOf(braked, 'left-tile').away).toBeLessThan(0);
    const driven = marksOf({ leftDrive: 2500 }, lookAt({ which: 'shaft' }));
    expect(runOf(driven, 'left-force').up).toBeLessThan(0);
    expect(sizeOf(driven, 'left-tile').away).toBeGreaterThan(0);
  });

  test('has its outline from before a change, and no other time', () => {
    const keys = (changes: Partial<Setting>) => marksOf(changes).map(({ key }) => key);
    expect(keys({ leftBrake: 4000, spacer: 20 })).toContain('left-tile-before');
    expect(keys({ leftBrake: 4000 }).filter((key) => key.endsWith('-before'))).toEqual([]);
  });
});

describe('arrows', () => {
  test('on the rack: rods in tension pull it apart, and what is left points to the stronger', () => {
    const marks = marksOf({ leftBrake: 4000, rightBrake: 2000 });
    expect(runOf(marks, 'force-leftRodForce').across).toBeGreaterThan(20);
    expect(runOf(marks, 'force-rightRodForce').across).toBeLessThan(-20);
    expect(runOf(marks, 'force-netRackForce').across).toBeGreaterThan(20);
    expect(markOf(marks, 'label', 'force-leftRodForce-name').text).toMatch(/N in tension$/);
    expect(markOf(marks, 'label', 'force-netRackForce-name').text).toMatch(/^rack .* to the left$/);
  });

  test('on the rack are none where equal forces cancel, and the nought is said', () => {
    const marks = marksOf({ leftBrake: 4000, rightBrake: 4000 });
    expect(marks.map(({ key }) => key)).not.toContain('force-netRackForce');
    expect(markOf(marks, 'label', 'force-netRackForce-name').text).toBe('rack 0\u202fN');
  });

  test('of the yaw bend anticlockwise where the car is turned to its left', () => {
    expect(markOf(marksOf({ leftBrake: 4000 }), 'turn', 'yaw').sweep).toBeGreaterThan(1);
    expect(markOf(marksOf({ rightBrake: 4000 }), 'turn', 'yaw').sweep).toBeLessThan(-1);
  });

  test('across the car point to its left, which is right on paper, on both tyres', () => {
    const marks = marksOf({ crown: 90 });
    for (const side of ['left', 'right']) {
      expect(runOf(marks, `${side}-side-force`).across).toBeGreaterThan(20);
      expect(markOf(marks, 'turn', `${side}-turn`).sweep).toBeLessThan(-0.5);
    }
  });
});

describe('places to grab', () => {
  const handles = ['leftBrake', 'rightBrake', 'spacer'] as const;

  test('are on the paper from the least force to the most, on every car', () => {
    for (const car of MODEL_NAMES) {
      for (const [which, { loads }] of Object.entries(AXLE_CASES)) {
        for (const force of [-6000, 0, 4000, 8000]) {
          const look = lookAt({
            which: which as AxleLook['which'],
            handles: [loads.left, loads.right],
          });
          const scene = sceneOf({ [loads.left]: force, [loads.right]: force }, look, car);
          expect(drawn(scene, AXLE_PAPER).grips.length, `${car} ${which} ${force}`).toBe(2);
        }
      }
    }
  });

  test('move the force as far as they are carried', () => {
    const scene = sceneOf({ leftBrake: 3000 }, lookAt({ handles }));
    const handle = markOf(scene.marks, 'handle', 'handle-leftBrake');
    const { scale } = AXLE_CASES.brake;
    const to = { ...handle.at, up: handle.at.up + 1000 * scale * axleUnit(scene.window) };
    const sketch = { view: 'top', side: 'left' } as const;
    expect(dragged(handle, sketch, 3000, handle.at, to)).toBeCloseTo(4000, 6);
  });

  test('pull rearward where a shaft holds back', () => {
    const look = lookAt({ which: 'shaft', handles: ['leftDrive'] });
    const scene = sceneOf({ leftDrive: -3000 }, look);
    const handle = markOf(scene.marks, 'handle', 'handle-leftDrive');
    const to = { ...handle.at, up: handle.at.up + 100 };
    const sketch = { view: 'top', side: 'left' } as const;
    expect(dragged(handle, sketch, -3000, handle.at, to)).toBeLessThan(-3000);
  });

  test('are there only for the loads of the case', () => {
    const keys = marksOf({}, lookAt({ handles })).map(({ key }) => key);
    expect(keys.filter((key) => key.startsWith('handle-'))).toEqual([
      'handle-rightBrake',
      'handle-leftBrake',
    ]);
  });
});

test('no two marks have one key', () => {
  const keys = marksOf(
    { leftBrake: 4000, rightBrake: 500, spacer: 20, crown: 90 },
    lookAt({ handles: ['leftBrake', 'rightBrake'] }),
  ).map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});

test('the description says what is set and what comes out, with its direction', () => {
  const { description } = sceneOf({ leftBrake: 4500, rightBrake: 500 });
  expect(description).toContain('left braking force 4500\u202fN rearward on the tyre');
  expect(description).toMatch(/Yaw moment of the front wheels .* to the left: it turns the car/);
  expect(sceneOf({}).description).toContain('without a load');
});

test('nothing that is not asked for is drawn', () => {
  const keys = marksOf({ leftBrake: 4000 }, lookAt({ measures: [] })).map(({ key }) => key);
  expect(keys.filter((key) => /tile|turn|yaw|force-(left|right|net)/.test(key))).toEqual([]);
  expect(keys).toContain('left-force');
});

test('what turns the car is written clear of what turns a driven wheel', () => {
  const measures = ['leftMoment', 'rightMoment', 'yawMoment'] as const;
  const look = lookAt({ which: 'shaft', measures });
  for (const drives of [
    { leftDrive: 4000, rightDrive: -500 },
    { leftDrive: -4500, rightDrive: 4000 },
  ]) {
    const { shapes } = drawn(sceneOf(drives, look), AXLE_PAPER);
    const texts = shapes.filter((shape) => shape.kind === 'text');
    const car = texts.find(({ key }) => key === 'yaw-name-text');
    const wheels = texts.filter(({ key }) => key.endsWith('moment-text'));
    expect(wheels).toHaveLength(2);
    for (const { x, y } of wheels) {
      const clear = Math.max(
        Math.abs(y - (car?.y ?? NaN)) / 17,
        Math.abs(x - (car?.x ?? NaN)) / 200,
      );
      expect(clear).toBeGreaterThan(1);
    }
  }
});
