import { expect, test } from 'vitest';
import { entryText, readEntry, withUnit } from '../../../src/lib/bench/entry.ts';

const LENGTH = { unit: 'mm', least: 50, most: 2000 } as const;

test('a field reads decimal commas and other units into the document’s unit', () => {
  expect(readEntry('292,5', LENGTH, 'metric')).toEqual({ kind: 'number', value: 292.5 });
  expect(readEntry('11.5 in', LENGTH, 'metric')).toEqual({ kind: 'number', value: 292.1 });
  expect(readEntry('11.5', LENGTH, 'us')).toEqual({ kind: 'number', value: 292.1 });
});

test('nothing typed is no mistake; what is out of range or of another kind is told with what is allowed', () => {
  expect(readEntry('  ', LENGTH, 'metric')).toEqual({ kind: 'nothing' });
  expect(readEntry('20', LENGTH, 'metric')).toMatchObject({
    kind: 'problem',
    message: expect.stringContaining('50 to 2000') as string,
  });
  expect(readEntry('300 N', LENGTH, 'metric')).toMatchObject({
    message: expect.stringContaining('is a force') as string,
  });
});

test('a load may be written as the mass that stands on the scale', () => {
  const load = { unit: 'N', least: 500, most: 20_000 } as const;
  // Standard gravity, 9.80665 m/s²: ISO 80000-3 (from memory).
  expect(readEntry('400 kg', load, 'metric')).toEqual({ kind: 'number', value: 3922.66 });
  expect(readEntry('100 lb', load, 'metric')).toMatchObject({ kind: 'problem' });
});

test('a number is shown as it was typed, and in inches where these are shown', () => {
  expect(entryText(0.1, 'mm', 'metric')).toBe('0.1');
  expect(entryText(254, 'mm', 'us')).toBe('10');
  expect(withUnit(-1.5, 'deg', 'metric')).toBe('−1.5°');
});

test('an angle typed in minutes is kept as it is, and shown to four decimals', () => {
  const angle = { unit: 'deg', least: -30, most: 30 } as const;
  const read = readEntry('0°05’', angle, 'metric');
  // Worked by hand: five of sixty minutes.
  expect(read.kind === 'number' ? read.value : NaN).toBeCloseTo(5 / 60, 9);
  expect(entryText(5 / 60, 'deg', 'metric')).toBe('0.0833');
  expect(entryText(-1.25, 'deg', 'metric')).toBe('−1.25');
});
