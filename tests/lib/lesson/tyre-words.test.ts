import { describe, expect, test } from 'vitest';
import { tyreWords } from '../../../src/lib/lesson/tyre-words.ts';

const SIZE = '205/55 R16 91V';

const said = (of: string, against?: string, shown_kmh = 100): string =>
  // The space before a unit is narrow and does not break.
  tyreWords({ of, size: SIZE, against, shown_kmh }).replace('\u202f', ' ');

describe('a tyre is said', () => {
  test.each([
    ['size', '205/55 R16 91V'],
    ['width', '205.0 mm'],
    ['height', '112.8 mm'],
    ['rim', '406.4 mm'],
    ['diameter', '631.9 mm'],
    ['shown', '100.0 km/h'],
  ])('by its %s: %s', (of, expected) => {
    expect(said(of)).toBe(expected);
  });

  test('with a loaded radius between its bounds, and less of it than it rolls on', () => {
    const [least, loaded, most, rolling] = ['loadedLeast', 'loaded', 'loadedMost', 'rolling'].map(
      (of) => parseFloat(said(of)),
    );
    expect([least, loaded, most, rolling]).toEqual(
      [least, loaded, most, rolling].toSorted((a = 0, b = 0) => a - b),
    );
  });

  test('in place of another, by what it has more of', () => {
    expect(said('diameter', '195/65 R15')).toBe('−2.6 mm');
    expect(said('share', '195/65 R15')).toBe('−0.4 %');
    expect(said('trueSpeed', '195/65 R15')).toBe('99.6 km/h');
    expect(said('trueSpeed', '195/65 R15', 50)).toBe('49.8 km/h');
  });

  test('with turns that fill a kilometre', () => {
    const { turns, way } = { turns: Number(said('turns')), way: parseFloat(said('circumference')) };
    expect(turns * way).toBeCloseTo(1e6, -3);
  });
});

test('in miles an hour where those are read', () => {
  expect(tyreWords({ of: 'shown', size: SIZE, shown_kmh: 100 }, 'us')).toBe('62.1\u202fmph');
});

test('what is no tyre, or needs another one, does not build', () => {
  expect(() => said('tread')).toThrow('<TyreSize of="tread" />');
  expect(() => said('share')).toThrow('need against');
  expect(() => tyreWords({ of: 'size', size: '205/55', shown_kmh: 100 })).toThrow('205/55');
});
