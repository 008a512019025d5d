import { describe, expect, test } from 'vitest';
import { stationAt, WAY_END, WAY_STATIONS } from '#scenes/bearing/force-way.ts';
import { markOf } from '../corner/marks-of.ts';
import { bearingOf } from './bearing-of.ts';

const headAt = (way: number, row: string, spacer = 0): { across: number; up: number } =>
  markOf(bearingOf('linnet, left', { weight: 4150, spacer }, { way }), 'spot', `way-${row}-head`)
    .at;

describe('a force on its way', () => {
  test('goes one way as far as the hub, and from there two', () => {
    expect(headAt(2, 'outboard')).toEqual(headAt(2, 'inboard'));
    expect(headAt(3, 'outboard')).not.toEqual(headAt(3, 'inboard'));
  });

  test('enters below, at the wheel, and ends in the carrier above the rows', () => {
    expect(headAt(0, 'outboard').up).toBeLessThan(-80);
    expect(headAt(WAY_END, 'outboard').up).toBeGreaterThan(40);
    expect(headAt(WAY_END, 'inboard').up).toBeGreaterThan(40);
  });

  test('goes through the balls below where a row’s loaded side has flipped', () => {
    expect(headAt(WAY_END, 'inboard', 40).up).toBeLessThan(-40);
    expect(headAt(WAY_END, 'outboard', 40).up).toBeGreaterThan(40);
  });
});

test('every station says who presses whom, and the last one is the carrier', () => {
  expect(WAY_STATIONS.every(({ name }) => name.includes(' on '))).toBe(true);
  expect(stationAt(-1).name).toBe('road on tyre');
  expect(stationAt(2.4).name).toBe('hub on inner rings');
  expect(stationAt(99).name).toBe('outer ring on carrier');
});
