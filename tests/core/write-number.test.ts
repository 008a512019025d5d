import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import {
  writeDegrees,
  writeDegreesMinutes,
  writeFixed,
  writeShortest,
  writeSignificant,
} from '#core/write-number.ts';

describe('with fixed decimals', () => {
  const rows: readonly (readonly [number, number, string])[] = [
    [58.181818, 1, '58.2'],
    [58.181818, 0, '58'],
    [-0.5, 2, '−0.50'],
    [0, 2, '0.00'],
    [-0, 2, '0.00'],
    [-0.004, 2, '0.00'],
    [-0.005001, 2, '−0.01'],
    [0.125, 2, '0.13'],
    [-0.125, 2, '−0.13'],
    [123456789.5, 3, '123456789.500'],
    [1e20, 0, '100000000000000000000'],
  ];
  test.each(rows)('%d to %d decimals is %s', (value, decimals, written) => {
    expect(writeFixed(value, decimals)).toBe(written);
  });
});

describe('with significant digits', () => {
  const rows: readonly (readonly [number, number, string])[] = [
    [173.2614902, 3, '173'],
    [173.2614902, 5, '173.26'],
    [0.0150001, 3, '0.0150'],
    [29109, 3, '29100'],
    [-29109, 1, '−30000'],
    [9.96, 2, '10'],
    [99.96, 3, '100'],
    [999.5, 3, '1000'],
    [0, 3, '0.00'],
    [-0, 1, '0'],
    [-0.0000012, 2, '−0.0000012'],
    [1.2e-7, 3, '1.20·10⁻⁷'],
    [-6.02214076e23, 4, '−6.022·10²³'],
    [1e15, 1, '1·10¹⁵'],
  ];
  test.each(rows)('%d to %d digits is %s', (value, digits, written) => {
    expect(writeSignificant(value, digits)).toBe(written);
  });
});

describe('with the digits it takes', () => {
  const rows: readonly (readonly [number, string])[] = [
    [0.1, '0.1'],
    [-1500, '−1500'],
    [-0, '0'],
    [1 / 3, '0.3333333333333333'],
    [1e12, '1·10¹²'],
    [1234567890123, '1234567890123'],
    [1e-7, '1·10⁻⁷'],
    [-2.5e21, '−2.5·10²¹'],
  ];
  test.each(rows)('%d is %s', (value, written) => {
    expect(writeShortest(value)).toBe(written);
  });
});

describe('an angle', () => {
  const rows: readonly (readonly [number, string, string])[] = [
    [1.5, '1.50°', '1°30′'],
    [-0.4, '−0.40°', '−0°24′'],
    [0, '0.00°', '0°00′'],
    [-0.001, '0.00°', '0°00′'],
    [1.0833, '1.08°', '1°05′'],
    [2.9999, '3.00°', '3°00′'],
    [-12.25, '−12.25°', '−12°15′'],
    [359.995, '360.00°', '360°00′'],
  ];
  test.each(rows)('of %d° is %s or %s', (angle, decimal, withMinutes) => {
    expect(writeDegrees(radians(angle), 2)).toBe(decimal);
    expect(writeDegreesMinutes(radians(angle))).toBe(withMinutes);
  });
});

describe('what cannot be written is an error of the program', () => {
  test.each([NaN, Infinity, -Infinity])('%d', (value) => {
    expect(() => writeFixed(value, 1)).toThrow(RangeError);
    expect(() => writeSignificant(value, 1)).toThrow(RangeError);
    expect(() => writeShortest(value)).toThrow(RangeError);
    expect(() => writeDegrees(value, 1)).toThrow(RangeError);
    expect(() => writeDegreesMinutes(value)).toThrow(RangeError);
  });

  test.each([-1, 0.5, 21, NaN])('%d decimals', (decimals) => {
    expect(() => writeFixed(1, decimals)).toThrow(/allowed: a whole number from 0 to 20/);
  });

  test.each([0, 22])('%d digits', (digits) => {
    expect(() => writeSignificant(1, digits)).toThrow(/allowed: a whole number from 1 to 21/);
  });

  test('fixed decimals of a number with more than 21 digits', () => {
    expect(() => writeFixed(1e21, 0)).toThrow(RangeError);
  });
});
