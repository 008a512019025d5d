import { describe, expect, test } from 'vitest';
import { rowOf } from './arbitraries.ts';

const ISO_BALLS = 'ISO 281:2007, Table 3, single row (from memory)';
const LYC =
  'LYC bearing knowledge, Table 2: angular contact ball bearings, equivalent dynamic load';
const SHEET = 'data sheet of the angular contact ball bearing 7206-B (fgfa.com.cn)';
const TAPERED = 'catalogue e and Y, with the contact angle of ISO 355 (from memory)';

describe('ball rows', () => {
  // The printed numbers themselves: no tolerance.
  test.each([
    { angle: 20, e: 0.57, X: 0.43, Y: 1.0, source: ISO_BALLS },
    { angle: 25, e: 0.68, X: 0.41, Y: 0.87, source: ISO_BALLS },
    { angle: 30, e: 0.8, X: 0.39, Y: 0.76, source: ISO_BALLS },
    { angle: 35, e: 0.95, X: 0.37, Y: 0.66, source: ISO_BALLS },
    { angle: 40, e: 1.14, X: 0.35, Y: 0.57, source: ISO_BALLS },
    { angle: 45, e: 1.34, X: 0.33, Y: 0.5, source: ISO_BALLS },
    { angle: 25, e: 0.68, X: 0.41, Y: 0.87, source: LYC },
    { angle: 40, e: 1.14, X: 0.35, Y: 0.57, source: LYC },
    { angle: 40, e: 1.14, X: 0.35, Y: 0.57, source: SHEET },
  ])('$angle degrees: e $e, X $X, Y $Y ($source)', ({ angle, e, X, Y }) => {
    expect(rowOf('ball', 1, angle).factors).toEqual({ e, X, Y });
  });

  // A pair is rated with 2^0.7 times the C of one row, so its printed X and Y are 2^0.7 times ours.
  // Tolerance: both sides are printed with two digits, 0.005·1.62 + 0.005.
  test.each([
    { angle: 25, e: 0.68, X: 0.67, Y: 1.41, source: `${LYC}, pair` },
    { angle: 30, e: 0.8, X: 0.63, Y: 1.24, source: `${LYC}, double-row` },
    { angle: 35, e: 0.95, X: 0.6, Y: 1.07, source: `${LYC}, four-point contact` },
    { angle: 40, e: 1.14, X: 0.57, Y: 0.93, source: `${LYC}, pair` },
  ])('$angle degrees agree with the factors of two rows ($source)', ({ angle, e, X, Y }) => {
    const row = rowOf('ball', 1, angle).factors;
    expect(row.e).toBe(e);
    expect(Math.abs(row.X * 2 ** 0.7 - X)).toBeLessThanOrEqual(0.0131);
    expect(Math.abs(row.Y * 2 ** 0.7 - Y)).toBeLessThanOrEqual(0.0131);
  });
});

describe('tapered roller rows', () => {
  // Tolerance: printed with two digits, and not always rounded the usual way (0.375 stands as 0.37).
  test.each([
    { name: '30206', angle: 14 + 2 / 60 + 10 / 3600, e: 0.37, Y: 1.6, source: TAPERED },
    { name: '31305', angle: 28 + 48 / 60 + 39 / 3600, e: 0.83, Y: 0.73, source: TAPERED },
  ])('$name, $angle degrees: e $e, X 0.4, Y $Y ($source)', ({ angle, e, Y }) => {
    const row = rowOf('roller', 1, angle).factors;
    expect(Math.abs(row.e - e)).toBeLessThanOrEqual(0.0051);
    expect(row.X).toBe(0.4);
    expect(Math.abs(row.Y - Y)).toBeLessThanOrEqual(0.0051);
  });
});
