import { describe, expect, test } from 'vitest';
import { deedRows, feltWords, numberRows } from '#scenes/bodies/bodies-numbers.ts';
import type { BodiesLook } from '#scenes/bodies/bodies-look.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { apartIn, LOADED, settingOf } from './bodies-of.ts';

const plain = (text: string): string => text.replaceAll('\u202f', ' ');
const linnet = modelNamed('linnet, left');

const rowsOf = (look: BodiesLook, moments = true): Readonly<Record<string, string>> =>
  Object.fromEntries(
    numberRows(linnet, settingOf(LOADED[look.which]), look, moments).map(({ key, value }) => [
      key,
      plain(value),
    ]),
  );

describe('the numbers beside the drawing', () => {
  test('say force times radius, and the moment only where it is asked for', () => {
    expect(rowsOf(apartIn('brake'), false)).toEqual({ torque: '2500 N × 292.0 mm = 730.0 N·m' });
    expect(rowsOf(apartIn('brake'))['moment']).toBe('19.9 N·m to the right');
    expect(rowsOf(apartIn('shaft'))['moment']).toBe('82.8 N·m to the right');
    expect(rowsOf(apartIn('edge'))['moment']).toBe('220.7 N·m to the left');
  });

  test('have no torque for an edge, which pushes toward the wheel centre', () => {
    expect(rowsOf(apartIn('edge'), false)).toEqual({});
    expect(rowsOf(apartIn('rolling'), false)).toHaveProperty('torque');
  });

  test('keep the moment as it is while couple is traded for a way down', () => {
    const ways = [0, 0.25, 0.5, 1].map((carried) => rowsOf(apartIn('brake', { carried })));
    expect(new Set(ways.map(({ moment }) => moment)).size).toBe(1);
    expect(new Set(ways.map((row) => row['of-force'])).size).toBe(4);
    expect(ways.at(-1)).toMatchObject({
      'of-force': '19.9 N·m to the right',
      'of-couple': '0.0 N·m',
    });
  });

  test('are none without a load', () => {
    expect(numberRows(linnet, settingOf({}), apartIn('brake'), true)).toEqual([]);
    expect(feltWords(linnet, settingOf({}), apartIn('brake'))).toBe('');
  });
});

describe('the table', () => {
  test('has a line for each arrow, body by body, and names pairs', () => {
    const rows = deedRows(linnet, settingOf(LOADED.brake), apartIn('brake'));
    expect(rows.map(({ name, pair }) => [name, pair])).toEqual([
      ['road on tyre', undefined],
      ['pads on disc', 'brake'],
      ['carrier on wheel', 'bearing'],
      ['wheel on carrier', 'bearing'],
      ['disc on pads', 'brake'],
    ]);
    expect(rows.map(({ body }) => body)).toEqual(['wheel', 'wheel', 'wheel', 'carrier', 'carrier']);
    expect(plain(rows[1]?.size ?? '')).toBe('730.0 N·m');
    expect(rows[1]?.way).toBe('against the rolling');
  });
});

test('what the carrier feels is said in a sentence, with the reason where there is no torque', () => {
  const said = (look: BodiesLook): string =>
    plain(feltWords(linnet, settingOf(LOADED[look.which]), look));
  expect(said(apartIn('brake'))).toBe(
    'The carrier feels 2500 N rearward at the wheel centre and the brake’s torque of 730.0 N·m.',
  );
  expect(said(apartIn('brake', { carried: 0 }))).toMatch(/the same force at the road\.$/);
  expect(said(apartIn('shaft'))).toMatch(/^The carrier feels 1500 N forward .* no torque: .*shaft/);
  expect(said(apartIn('edge'))).toContain('through the wheel centre');
  expect(said(apartIn('rolling'))).toContain('80 N rearward');
});
