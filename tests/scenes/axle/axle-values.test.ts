import { describe, expect, test } from 'vitest';
import { isAxleQuantity, AXLE_QUANTITIES } from '#core/axle-quantities.ts';
import type { QuantityId } from '#core/quantities.ts';
import { AXLE_CASE_IDS, AXLE_CASES, caseIn, caseOf, handedOver } from '#scenes/axle/axle-cases.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS, isChanged, unchanged, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';

const CARS = ['linnet, left', 'pelican, left', 'siskin, left', 'bittern, left'];
const at = (changes: Partial<Setting>): Setting => adjusted(AS_IT_STANDS, changes);
const value = (id: QuantityId, changes: Partial<Setting>, car = 'linnet, left'): number =>
  valueOf(id, standing(modelNamed(car), at(changes)));

describe.each(CARS)('on the axle of %s', (car) => {
  test.each(AXLE_CASE_IDS)('equal forces leave nothing on the rack: %s', (which) => {
    const { left, right } = AXLE_CASES[which].loads;
    const equal = { [left]: 250, [right]: 250 };
    expect(value('leftMoment', equal, car)).not.toBeCloseTo(0, 1);
    expect(value('leftRodForce', equal, car)).toBeCloseTo(value('rightRodForce', equal, car), 9);
    for (const id of ['steeringMoment', 'netRackForce', 'axleRimForce', 'yawMoment'] as const) {
      expect(value(id, equal, car)).toBeCloseTo(0, 9);
    }
  });

  test('one wheel alone is that corner by itself', () => {
    const alone = { leftBrake: 3000, spacer: 12 };
    const corner = { brake: 3000, spacer: 12 };
    const pairs = [
      ['leftMoment', 'brakeMoment'],
      ['steeringMoment', 'brakeMoment'],
      ['leftRodForce', 'rodForce'],
      ['netRackForce', 'rackForce'],
      ['axleRimForce', 'rimForce'],
      ['axleRimForceUnassisted', 'rimForceUnassisted'],
    ] as const;
    for (const [both, one] of pairs) {
      expect(value(both, alone, car)).toBeCloseTo(value(one, corner, car), 9);
    }
  });

  test('side forces of a sloping road add on the rack, and turn the wheels downhill', () => {
    const slope = { crown: 100 };
    expect(value('leftMoment', slope, car)).toBeLessThan(-1);
    expect(value('rightMoment', slope, car)).toBeCloseTo(value('leftMoment', slope, car), 9);
    expect(value('steeringMoment', slope, car)).toBeLessThan(-2);
  });

  test('the softer tyre pulls car and wheels its way', () => {
    const soft = { leftDrag: 60, rightDrag: 140 };
    expect(value('yawMoment', soft, car)).toBeLessThan(-30);
    expect(value('steeringMoment', soft, car)).toBeLessThan(-2);
  });
});

describe('with grip on the left alone', () => {
  const split = { leftBrake: 4500, rightBrake: 500 };

  test('every car is turned to the left, whatever its scrub radius', () => {
    for (const car of CARS) expect(value('yawMoment', split, car)).toBeGreaterThan(2000);
  });

  test('a negative scrub radius pushes the steering against the yaw, a positive one with it', () => {
    for (const car of CARS) {
      const scrub = value('scrubRadius', {}, car);
      expect(Math.sign(value('steeringMoment', split, car))).toBe(Math.sign(scrub));
    }
    expect(value('scrubRadius', {})).toBeLessThan(0);
    expect(value('steeringMoment', split)).toBeLessThan(0);
  });

  test('a spacer turns that sign round where it carries the tyre over the axis', () => {
    const flip = -1000 * value('scrubRadius', {});
    expect(value('steeringMoment', { ...split, spacer: flip - 1 })).toBeLessThan(0);
    expect(value('steeringMoment', { ...split, spacer: flip + 1 })).toBeGreaterThan(0);
  });

  test('held through the shafts, the steering is pushed with the yaw on every car', () => {
    const held = { leftDrive: -4500, rightDrive: -500 };
    for (const car of CARS) {
      expect(value('yawMoment', held, car)).toBeCloseTo(value('yawMoment', split, car), 9);
      expect(value('steeringMoment', held, car)).toBeGreaterThan(100);
    }
  });
});

test('under power the shaft at the larger angle decides, outer ends lower: toward the other side', () => {
  const both = { leftDrive: 2500, rightDrive: 2500 };
  expect(value('steeringMoment', { ...both, leftShaftRise: -8, rightShaftRise: -3 })).toBeLessThan(
    -10,
  );
  expect(value('steeringMoment', { ...both, leftShaftRise: -5, rightShaftRise: -5 })).toBeCloseTo(
    0,
    9,
  );
});

test('a corner is read the same from its right side', () => {
  const setting = at({ leftBrake: 4000, rightBrake: 1500, spacer: 15 });
  for (const id of Object.keys(AXLE_QUANTITIES).filter(isAxleQuantity)) {
    const [left, right] = ['siskin, left', 'siskin, right'].map((name) =>
      valueOf(id, standing(modelNamed(name), setting)),
    );
    expect(left).toBeCloseTo(right ?? NaN, 9);
  }
});

describe('loads', () => {
  test('handed over to another case pull the tyres just as hard', () => {
    const braked = at({ leftBrake: 4000, rightBrake: 1500 });
    const held = adjusted(braked, handedOver(braked, 'brake', 'shaft'));
    expect(held).toEqual(at({ leftDrive: -4000, rightDrive: -1500 }));
    expect(adjusted(held, handedOver(held, 'shaft', 'edge'))).toEqual(
      at({ leftBlow: 4000, rightBlow: 1500 }),
    );
    expect(handedOver(braked, 'brake', 'brake')).toEqual({});
  });

  test('that drive leave a brake nothing to hold', () => {
    const driven = at({ leftDrive: 2000 });
    expect(adjusted(driven, handedOver(driven, 'shaft', 'brake'))).toEqual(at({}));
  });

  test('of a rolling tyre begin at what is usual', () => {
    const rolling = handedOver(at({ leftBlow: 6000 }), 'edge', 'rolling');
    expect(rolling).toMatchObject({ leftBlow: 0, leftDrag: 60, rightDrag: 60 });
  });

  test('say which case they belong to', () => {
    expect(caseIn(at({}))).toBeUndefined();
    expect(caseIn(at({ rightDrive: 100 }))).toBe('shaft');
    expect(caseOf(['spacer', 'leftBlow'])).toBe('edge');
    expect(caseOf([])).toBe('brake');
  });

  test('come and go: they are no change to the car', () => {
    const setting = at({ leftBrake: 3000, crown: 90 });
    expect(isChanged(setting)).toBe(false);
    expect(unchanged({ ...setting, spacer: 20 })).toEqual(setting);
  });
});
