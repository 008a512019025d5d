import { expect, test } from 'vitest';
import { readTyped } from '../../../src/lib/figures/typed-number.ts';

const SCALE = { kind: 'length', least: 0, most: 60 } as const;

test('a number within the bounds is read in the shown unit or in any other of its kind', () => {
  expect(readTyped('20', SCALE, 'metric')).toEqual({ ok: true, value: 20 });
  expect(readTyped('2,5 cm', SCALE, 'metric')).toEqual({ ok: true, value: 25 });
  expect(readTyped('60', SCALE, 'metric')).toEqual({ ok: true, value: 60 });
});

test('a number outside the bounds is told what is allowed', () => {
  const read = readTyped(' 61 ', SCALE, 'metric');
  expect(read).toMatchObject({ ok: false });
  expect(read.ok ? '' : read.problem).toMatch(/^61 is outside .* allowed: 0(?:\.0)? to 60/);
});

test('what is no number is told so', () => {
  expect(readTyped('wide', SCALE, 'metric')).toMatchObject({ ok: false });
  expect(readTyped('20 kg', SCALE, 'metric')).toMatchObject({ ok: false });
});
