import { describe, expect, test } from 'vitest';
import { AS_DRIVEN, drivenDuty, ROUGH_ROAD } from '#core/bearing/driven-duty.ts';

const DUTY = [
  { share: 0.05, vertical: 6000, inward: 2500 },
  { share: 0.9, vertical: 4000, inward: 0 },
  { share: 0.05, vertical: 2500, inward: -1000 },
];

const driven = (changes: Partial<typeof AS_DRIVEN>) =>
  Object.fromEntries(
    drivenDuty(DUTY, { ...AS_DRIVEN, ...changes }).map(({ kind, ...phase }) => [kind, phase]),
  );

describe('a duty cycle', () => {
  test('is its own where nothing is driven differently, with no rough road in it', () => {
    expect(drivenDuty(DUTY, AS_DRIVEN)).toEqual([
      { kind: 'straight', share: 0.9, vertical: 4000, inward: 0 },
      { kind: 'rough', share: 0, vertical: 4800, inward: 0 },
      { kind: 'inner', share: 0.05, vertical: 2500, inward: -1000 },
      { kind: 'outer', share: 0.05, vertical: 6000, inward: 2500 },
    ]);
  });

  test('takes more bends and rough road from straight driving', () => {
    const { straight, rough, inner, outer } = driven({ outer: 0.1, inner: -0.05, rough: 0.2 });
    expect(straight?.share).toBeCloseTo(0.65, 12);
    expect([rough?.share, inner?.share]).toEqual([0.2, 0]);
    expect(outer?.share).toBeCloseTo(0.15, 12);
  });

  test('presses harder on a rough road, by the factor of its source', () => {
    expect(driven({ rough: 0.1 })['rough']?.vertical).toBeCloseTo(4000 * ROUGH_ROAD, 9);
  });

  test('shifts half of the load at half of the side force', () => {
    const { straight, inner, outer } = driven({ pace: 0.5 });
    expect([outer?.inward, outer?.vertical]).toEqual([1250, 5000]);
    expect([inner?.inward, inner?.vertical]).toEqual([-500, 3250]);
    expect(straight?.vertical).toBe(4000);
  });

  test('grows in all its loads with the load of the car', () => {
    const { straight, outer } = driven({ load: 2 });
    expect([straight?.vertical, outer?.vertical, outer?.inward]).toEqual([8000, 12000, 5000]);
  });

  test('is no duty cycle with less than nothing straight ahead, or with phases that are not known', () => {
    expect(() => drivenDuty(DUTY, { ...AS_DRIVEN, rough: 0.95 })).toThrow(
      /left to drive straight ahead/,
    );
    expect(() => drivenDuty(DUTY.slice(1), AS_DRIVEN)).toThrow(/phase that is outer/);
    expect(() => drivenDuty([...DUTY, ...DUTY.slice(1, 2)], AS_DRIVEN)).toThrow(/straight/);
  });
});
