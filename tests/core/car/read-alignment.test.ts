import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { readAlignment } from '#core/car/read-alignment.ts';
import type { Fault } from '#core/fault.ts';
import { edited } from '../document/edit.ts';

const PAIR = { least: -1, most: 1, difference: 0.5 };
const GOOD = {
  camber_deg: PAIR,
  caster_deg: PAIR,
  inclination_deg: PAIR,
  includedAngle_deg: PAIR,
  toe_deg: { least: 0, most: 0.2 },
};

function read(value: unknown) {
  const faults: Fault[] = [];
  return { alignment: readAlignment({ value, path: 'alignment', faults }), faults };
}

test('bands are read in degrees and kept in radians', () => {
  const { alignment, faults } = read(GOOD);
  expect(faults).toEqual([]);
  expect(degrees(alignment.camber.least)).toBeCloseTo(-1, 12);
  expect(degrees(alignment.camber.difference)).toBeCloseTo(0.5, 12);
  expect(degrees(alignment.toe.most)).toBeCloseTo(0.2, 12);
});

describe('a fault is named by its place', () => {
  test.each([
    ['a band that ends before it begins', { 'camber_deg.most': -1.5 }, 'alignment.camber_deg.most'],
    ['a band without any room', { 'toe_deg.most': 0 }, 'alignment.toe_deg.most'],
    [
      'a difference below nought',
      { 'caster_deg.difference': -0.5 },
      'alignment.caster_deg.difference',
    ],
    ['a missing end', { 'toe_deg.least': undefined }, 'alignment.toe_deg.least'],
    ['a missing line', { inclination_deg: undefined }, 'alignment.inclination_deg'],
    ['a difference of toe, which is added up', { toe_deg: PAIR }, 'alignment.toe_deg.difference'],
  ])('%s', (_, edits, path) => {
    expect(read(edited(GOOD, edits)).faults.map((fault) => fault.path)).toEqual([path]);
  });
});
