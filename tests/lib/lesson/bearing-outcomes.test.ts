import { describe, expect, test } from 'vitest';
import type { QuantityId } from '#core/quantities.ts';
import { outcomesOf } from '../../../src/lib/lesson/outcomes.ts';
import { slipOf, slipValue } from '../../../src/lib/lesson/prediction-slips.ts';
import { writtenSetting } from '../../../src/lib/lesson/written-setting.ts';
import { trainingCar } from '../../training-cars.ts';

const BEND = 'weight: 5800, side: -2600';
const outcomes = (of: QuantityId, set = BEND) =>
  outcomesOf(of, trainingCar('siskin').left, writtenSetting(''), writtenSetting(set));

describe('wrong roads about a wheel bearing', () => {
  test('end at what the other row has', () => {
    const radial = outcomes('inboardRadial');
    expect(slipValue('otherRow', radial)).toBeCloseTo(5800 - radial.after, 9);
    const thrust = outcomes('outboardThrust');
    expect(slipValue('otherRow', thrust)).toBeCloseTo(thrust.after - 2600, 9);
  });

  test('end at the wheel load, at half of it, or at the side force', () => {
    expect(slipValue('wholeLoad', outcomes('inboardRadial'))).toBe(5800);
    expect(slipValue('halfLoad', outcomes('inboardRadial'))).toBe(2900);
    expect(slipValue('sideForceAlone', outcomes('outboardThrust'))).toBe(2600);
  });

  test('end where the rows’ own spacing would take them: 66 − 56 · tan 35° is 26.8 mm', () => {
    const straight = outcomes('outboardRadial', 'weight: 4300');
    expect(slipValue('overRows', straight)).toBeCloseTo(2150 + (4300 * 6) / 26.788, 0);
  });

  test('end where the road would push the other way', () => {
    // 2900 − (34.8 + 761.8) / 0.066
    expect(slipValue('sideTurnedRound', outcomes('inboardRadial'))).toBeCloseTo(-9169.7, 1);
    expect(slipOf(-9170, ['sideTurnedRound'], outcomes('inboardRadial'), 5)).toContain('other way');
  });

  test('end at the row’s own induced thrust and the side force', () => {
    // 8115 N over twice 0.66
    expect(slipValue('ownInduced', outcomes('outboardThrust'))).toBeCloseTo(6147.8 + 2600, 1);
  });

  test('are not known of other quantities', () => {
    expect(slipValue('otherRow', outcomes('scrubRadius'))).toBeNaN();
  });
});
