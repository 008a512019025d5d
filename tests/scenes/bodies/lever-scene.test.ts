import { describe, expect, test } from 'vitest';
import { leverScene, offsetAt } from '#scenes/bodies/lever-scene.ts';
import { standing } from '#scenes/corner/standing.ts';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { markOf } from '../corner/marks-of.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';
import { apartIn, LOADED, settingOf } from './bodies-of.ts';

const leverOf = (name: string, carried: number) =>
  leverScene(modelNamed(name), settingOf(LOADED.brake), apartIn('brake', { carried }));

describe.each(MODEL_NAMES)('on the %s corner', (name) => {
  test('the way from axis to force is the spindle offset above and the scrub radius below', () => {
    const { corner, geometry } = standing(modelNamed(name), AS_IT_STANDS);
    expect(offsetAt(corner, 0)).toBeCloseTo(geometry.spindleOffset, 12);
    expect(offsetAt(corner, 1)).toBeCloseTo(geometry.scrubRadius, 12);
  });
});

describe('on the Linnet', () => {
  test('the two ends of the way are called by their names, what lies between by none', () => {
    const text = (carried: number): string =>
      markOf(leverOf('linnet, left', carried).marks, 'dimension', 'offset').text;
    expect([0, 0.5, 1].map(text)).toEqual([
      expect.stringContaining('spindle offset 56.7'),
      expect.stringContaining('axis to force 24.3'),
      expect.stringContaining('scrub radius −8.2'),
    ]);
  });

  test('the lever is as long as its dimension, and turns over where the axis passes outboard', () => {
    const way = (carried: number): number => {
      const { fromFoot, toFoot } = markOf(
        leverOf('linnet, left', carried).marks,
        'dimension',
        'offset',
      );
      return toFoot.across - fromFoot.across;
    };
    expect(way(0)).toBeCloseTo(56.7, 1);
    expect(way(1)).toBeCloseTo(-8.2, 1);
  });

  test('a braking force goes away from one who stands before the car, a driving force comes', () => {
    const { marks } = leverOf('linnet, left', 0);
    expect(markOf(marks, 'label', 'felt-name').text).toContain('away from you');
    const drive = leverScene(modelNamed('linnet, left'), settingOf(LOADED.shaft), apartIn('shaft'));
    expect(markOf(drive.marks, 'label', 'felt-name').text).toContain('toward you');
    expect(drive.description).toContain('spindle offset');
  });
});

test('without a load there is no lever', () => {
  const scene = leverScene(modelNamed('linnet, left'), AS_IT_STANDS, apartIn('brake'));
  expect(scene.marks.map(({ key }) => key)).not.toContain('lever');
  expect(scene.description).toContain('No force.');
});
