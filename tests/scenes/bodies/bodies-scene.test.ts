import { describe, expect, test } from 'vitest';
import { bodiesScene } from '#scenes/bodies/bodies-scene.ts';
import { BODIES_CASE_IDS } from '#scenes/bodies/cases.ts';
import type { Mark } from '#scenes/marks.ts';
import { markOf } from '../corner/marks-of.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { apartIn, bodiesOf, LOADED, settingOf } from './bodies-of.ts';

const deedsIn = (marks: readonly Mark[]): readonly string[] =>
  marks
    .filter(({ kind }) => kind === 'arrow' || kind === 'turn')
    .map(({ key }) => key.replace('deed-', ''));

const brake = bodiesOf('linnet, left', apartIn('brake'));

describe('together', () => {
  test.each([
    ['brake', ['tyre']],
    ['shaft', ['tyre', 'shaft']],
    ['edge', ['tyre']],
    ['rolling', ['tyre', 'load']],
  ] as const)('under the case %s only what comes from outside is drawn', (which, outside) => {
    expect(deedsIn(bodiesOf('linnet, left', apartIn(which, { apart: 0 })))).toEqual(outside);
  });
});

describe('apart', () => {
  test('a brake on the carrier sends back a force and a torque', () => {
    expect(deedsIn(brake)).toEqual(['tyre', 'pads', 'held', 'felt', 'dragged']);
  });

  test.each(['shaft', 'edge', 'rolling'] as const)(
    'under the case %s the carrier gets a force and no torque',
    (which) => {
      const deeds = deedsIn(bodiesOf('linnet, left', apartIn(which)));
      expect(deeds).toContain('felt');
      expect(deeds).not.toContain('dragged');
    },
  );

  test('each action stands over against its reaction: as long, the other way, in the other picture', () => {
    const [held, felt] = ['deed-held', 'deed-felt'].map((key) => markOf(brake, 'arrow', key));
    if (!held || !felt) throw new Error('the bearing has two forces');
    expect(held.to.across - held.from.across).toBeCloseTo(felt.from.across - felt.to.across, 9);
    expect(felt.from.across - held.from.across).toBeGreaterThan(300);
    const [pads, dragged] = ['deed-pads', 'deed-dragged'].map((key) => markOf(brake, 'turn', key));
    expect(pads?.sweep).toBeCloseTo(-(dragged?.sweep ?? NaN), 9);
  });

  test('both of a pair bear its name, and nothing else does', () => {
    for (const [pair, keys] of [
      ['bearing', ['deed-held', 'deed-felt']],
      ['brake', ['deed-pads', 'deed-dragged']],
    ] as const) {
      const bearers = brake.filter((mark) => mark.pair === pair && mark.kind !== 'label');
      expect(bearers.map(({ key }) => key)).toEqual(keys);
    }
  });

  test('the pads hold against the rolling: clockwise on a left wheel that rolls to the left', () => {
    expect(markOf(brake, 'turn', 'deed-pads').sweep).toBeLessThan(0);
    const right = bodiesOf('linnet, right', apartIn('brake'));
    expect(markOf(right, 'turn', 'deed-pads').sweep).toBeGreaterThan(0);
  });

  test('the road holds the tyre back: to the right on a left wheel, to the left on a right one', () => {
    const way = (marks: readonly Mark[]): number => {
      const { from, to } = markOf(marks, 'arrow', 'deed-tyre');
      return to.across - from.across;
    };
    expect(way(brake)).toBeGreaterThan(50);
    expect(way(bodiesOf('linnet, right', apartIn('brake')))).toBeLessThan(-50);
    expect(way(bodiesOf('linnet, left', apartIn('shaft')))).toBeLessThan(-50);
  });

  test('the push of an edge points at the wheel centre', () => {
    const marks = bodiesOf('pelican, left', apartIn('edge'));
    const { from, to } = markOf(marks, 'arrow', 'deed-tyre');
    const { from: centre } = markOf(marks, 'arrow', 'deed-held');
    const slope = (a: typeof from, b: typeof from): number => (b.up - a.up) / (b.across - a.across);
    expect(slope(from, to)).toBeCloseTo(slope(from, centre), 9);
  });
});

describe('carried down', () => {
  const carried = (share: number) => bodiesOf('linnet, left', apartIn('brake', { carried: share }));

  test('the force sinks from the wheel centre to the road', () => {
    const heights = [0, 0.5, 1].map(
      (share) => markOf(carried(share), 'arrow', 'deed-felt').from.up,
    );
    const road = markOf(brake, 'ground', 'road').up;
    expect(heights[0]).toBeCloseTo(road + 292, 1);
    expect(heights[1]).toBeCloseTo(road + 146, 1);
    expect(heights[2]).toBeCloseTo(road, 6);
  });

  test('the couple shrinks on the way, and at the road it is gone', () => {
    expect(markOf(carried(0), 'label', 'deed-left-name').text).toContain('730.0');
    expect(markOf(carried(0.5), 'label', 'deed-left-name').text).toContain('365.0');
    expect(deedsIn(carried(1))).not.toContain('left');
  });
});

test('without a load nothing acts, and the drawing says so', () => {
  for (const which of BODIES_CASE_IDS) {
    const scene = bodiesScene(modelNamed('linnet, left'), settingOf({}), apartIn(which));
    expect(deedsIn(scene.marks)).toEqual([]);
    expect(scene.description).toContain('Nothing acts along the car.');
  }
});

test('the description says who acts on whom, with the numbers of the core', () => {
  const { description } = bodiesScene(
    modelNamed('linnet, left'),
    settingOf(LOADED.brake),
    apartIn('brake'),
  );
  expect(description.replaceAll('\u202f', ' ')).toBe(
    'The left front wheel and its carrier seen from outside, drawn apart. ' +
      'Braking with a brake on the carrier. ' +
      'On the wheel: road on tyre, 2500 N rearward at the road; ' +
      'pads on disc, 730.0 N·m against the rolling; ' +
      'carrier on wheel, 2500 N forward at the wheel centre. ' +
      'On the carrier: wheel on carrier, 2500 N rearward at the wheel centre; ' +
      'disc on pads, 730.0 N·m with the rolling.',
  );
});
