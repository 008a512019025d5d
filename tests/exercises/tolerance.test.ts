import { describe, expect, test } from 'vitest';
import { QUANTITIES } from '#core/quantities.ts';
import { toSI } from '#core/units/convert.ts';
import { asWritten, halfDigit, roundingOf, toleranceOf } from '#exercises/tolerance.ts';

const mm = (value: number): number => toSI(value, 'mm');
const deg = (value: number): number => toSI(value, 'deg');
const length = { quantity: QUANTITIES.scrubRadius, unit: 'mm', decimals: 1 } as const;
const angle = { quantity: QUANTITIES.caster, unit: 'deg', decimals: 1 } as const;

describe('an entry may be off by', () => {
  test.each([
    ['one hundredth of a product', length, 0, mm(80), 0, mm(0.8)],
    ['two hundredths from the third step on', length, 2, mm(80), 0, mm(1.6)],
    ['no share of a sum', { ...length, sum: 'rounded' } as const, 2, mm(80), 0, mm(0.3)],
    ['never less than 0.3 mm', length, 0, mm(5), 0, mm(0.3)],
    ['never less than 0.1°', angle, 0, deg(4), 0, deg(0.1)],
    ['half as much again as rounding can do', length, 0, mm(5), mm(0.5), mm(0.75)],
    ['as much on the other side of nought', length, 0, mm(-80), 0, mm(0.8)],
  ])('%s', (_, part, index, answer, rounding, expected) => {
    expect(toleranceOf(part, index, answer, rounding)).toBeCloseTo(expected, 12);
  });
});

describe('a careful person’s rounding is at most', () => {
  test.each([
    ['half of the last decimal asked for', length, mm(23.4), mm(0.05)],
    ['half of the third digit, where that is coarser', length, mm(234.5), mm(0.5)],
    ['nothing, for a sum of printed numbers', { ...length, sum: 'exact' } as const, mm(234), 0],
  ])('%s', (_, part, value, expected) => {
    expect(roundingOf(part, value)).toBeCloseTo(expected, 12);
  });

  test('half a unit where whole numbers are asked for', () => {
    expect(halfDigit({ unit: 'mm', decimals: 0 })).toBeCloseTo(mm(0.5), 12);
  });
});

test('values are written down with halves away from nought', () => {
  const whole = { unit: 'mm', decimals: 0 } as const;
  expect(asWritten(whole, mm(2.5))).toBeCloseTo(mm(3), 12);
  expect(asWritten(whole, mm(-2.5))).toBeCloseTo(mm(-3), 12);
  expect(asWritten(length, mm(2.54))).toBeCloseTo(mm(2.5), 12);
});
