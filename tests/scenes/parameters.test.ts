import { describe, expect, test } from 'vitest';
import {
  allowedValue,
  isParameterId,
  PARAMETER_IDS,
  PARAMETERS,
  wholeStep,
} from '#scenes/parameters.ts';
import {
  adjusted,
  AS_IT_STANDS,
  isChanged,
  partOf,
  sameCar,
  sameSetting,
  unchanged,
} from '#scenes/setting.ts';

describe.each(PARAMETER_IDS)('%s', (id) => {
  const { least, most, step, positive, negative, none } = PARAMETERS[id];

  test('can be nought, which changes nothing, and something else', () => {
    expect(least).toBeLessThanOrEqual(0);
    expect(most).toBeGreaterThan(0);
    expect(allowedValue(id, 0)).toBe(0);
  });

  test('reaches both bounds in whole steps', () => {
    expect(wholeStep(id, least)).toBeCloseTo(least, 9);
    expect(wholeStep(id, most)).toBeCloseTo(most, 9);
    expect((most - least) / step).toBeGreaterThanOrEqual(20);
  });

  test('stays within its bounds', () => {
    expect(allowedValue(id, most + step)).toBe(most);
    expect(allowedValue(id, least - step)).toBe(least);
  });

  test('says both directions and the nought in words', () => {
    for (const words of [positive, negative, none]) expect(words).toMatch(/^[a-z]/);
    expect(none).not.toBe(positive);
    if (least < 0) expect(negative).not.toBe(positive);
  });
});

test('only parameters are parameters', () => {
  expect([isParameterId('spacer'), isParameterId('toString')]).toEqual([true, false]);
});

test('steps of a tenth come out as people write them', () => {
  expect(allowedValue('camberAtTop', wholeStep('camberAtTop', 0.3000001))).toBe(0.3);
  expect(Object.is(allowedValue('steer', -0), 0)).toBe(true);
});

describe('a setting', () => {
  test('is adjusted by what is said, and left alone in the rest', () => {
    const first = adjusted(AS_IT_STANDS, { spacer: 20 });
    expect(adjusted(first, { steer: 5 })).toEqual({ ...AS_IT_STANDS, spacer: 20, steer: 5 });
    expect(AS_IT_STANDS.spacer).toBe(0);
  });

  test('is the same as another with the same values', () => {
    expect(sameSetting({ ...AS_IT_STANDS }, AS_IT_STANDS)).toBe(true);
    expect(sameSetting({ ...AS_IT_STANDS, inset: 1 }, AS_IT_STANDS)).toBe(false);
  });

  test('has a before once a workshop has changed the car, not while it is steered or loaded', () => {
    const driven = adjusted(AS_IT_STANDS, { steer: 20, brake: 2000, weight: 4000 });
    expect([isChanged(AS_IT_STANDS), isChanged(driven)]).toEqual([false, false]);
    for (const id of ['spacer', 'upperInboard', 'camberAtCarrier', 'radius'] as const) {
      expect(isChanged(adjusted(driven, { [id]: 1 })), id).toBe(true);
    }
  });

  test('is compared with the car steered and loaded as it is now', () => {
    const now = adjusted(AS_IT_STANDS, { steer: 20, brake: 2000, spacer: 10 });
    expect(unchanged(now)).toEqual({ ...now, spacer: 0 });
  });

  test('is the same car as another, however the two are steered and loaded', () => {
    const spaced = adjusted(AS_IT_STANDS, { spacer: 20 });
    expect(sameCar(spaced, adjusted(spaced, { steer: 20, brake: 3000 }))).toBe(true);
    expect(sameCar(spaced, adjusted(spaced, { inset: 1 }))).toBe(false);
  });

  test('is made in part, steered and loaded as it is now', () => {
    const change = adjusted(AS_IT_STANDS, { spacer: 20, inset: -10, brake: 1000 });
    const now = adjusted(AS_IT_STANDS, { steer: 5, brake: 4000 });
    expect(partOf(change, now, 0.5)).toEqual({ ...now, spacer: 10, inset: -5 });
    expect(partOf(change, now, 0)).toEqual(now);
  });
});
