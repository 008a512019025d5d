import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { sheetReadings } from '#scenes/sheet/readings.ts';
import { trainingCar } from '../../training-cars.ts';

const LINNET = trainingCar('linnet');

const reading = (changes: Partial<Setting>) =>
  sheetReadings(LINNET, adjusted(AS_IT_STANDS, changes));

const SET = reading({});

describe('a sheet of a car as it stands', () => {
  test('says what the car’s own document says of camber and toe', () => {
    expect(degrees(SET.left.camber)).toBeCloseTo(-0.5, 12);
    expect(degrees(SET.right.camber)).toBeCloseTo(-0.5, 12);
    expect(degrees(SET.left.toe)).toBeCloseTo(0.1, 9);
  });

  test('has no differences, and the toe of both wheels together', () => {
    const { camber, caster, inclination, includedAngle, toe } = SET.pair;
    for (const difference of [camber, caster, inclination, includedAngle]) {
      expect(difference).toBeCloseTo(0, 12);
    }
    expect(degrees(toe)).toBeCloseTo(0.2, 9);
  });
});

describe('the right column', () => {
  test('stays as it is while the left wheel is set', () => {
    const now = reading({ camberAtTop: -1, camberAtCarrier: 0.5, upperRearward: 20, spacer: 10 });
    expect(now.right).toEqual(SET.right);
  });

  test('goes the other way than the left one when the subframe moves', () => {
    const now = reading({ subframe: 12 });
    const [left, right] = [now.left.camber - SET.left.camber, now.right.camber - SET.right.camber];
    expect(degrees(left)).toBeLessThan(-1);
    expect(degrees(right)).toBeGreaterThan(1);
    // The tangent bends: the two are near to each other, not the same.
    expect(Math.abs(degrees(left + right))).toBeLessThan(0.02);
  });
});

test('the pair’s column takes the right from the left, and of toe the sum', () => {
  const { left, right, pair } = reading({ camberAtCarrier: 1.2, subframe: -5 });
  expect(pair.camber).toBe(left.camber - right.camber);
  expect(pair.toe).toBe(left.toe + right.toe);
});

test('a wheel is measured straight ahead, whatever way it stands in the figure', () => {
  expect(reading({ steer: 20 })).toEqual(SET);
});

describe('toe, with the rods as they were,', () => {
  test('stays while only the axis moves', () => {
    expect(reading({ upperRearward: 20 }).left.toe).toBeCloseTo(SET.left.toe, 12);
  });

  test('changes when the carrier leans over with the strut', () => {
    const change = reading({ camberAtTop: -1.5 }).left.toe - SET.left.toe;
    expect(Math.abs(degrees(change))).toBeGreaterThan(0.05);
  });

  test('goes in on one side and out on the other when the subframe moves, and the sum nearly stays', () => {
    const { left, right, pair } = reading({ subframe: 12 });
    expect((left.toe - SET.left.toe) * (right.toe - SET.right.toe)).toBeLessThan(0);
    expect(Math.abs(degrees(pair.toe - SET.pair.toe))).toBeLessThan(0.05);
  });
});
