import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import type { Car } from '#core/car/car.ts';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { solve } from '#core/document/solve.ts';
import { measure } from '#core/geometry.ts';
import { outerDiameter, rimDiameter, sectionWidth } from '#core/tyre/dimensions.ts';
import { loadCapacity_kg } from '#core/tyre/load-index.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { distance } from '#core/vector.ts';
import { valueAt } from '../core/document/edit.ts';
import { valueOf } from '../core/example-corner.ts';
import { CAR_FILES, TRAINING_CARS } from '../training-cars.ts';

/** Standard acceleration of free fall, m/s². */
const GRAVITY = 9.80665;

/** A range that a value of a training car keeps to, so that lessons teach with numbers a workshop would meet. */
interface Row {
  readonly what: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly source: string;
  readonly of: (car: Car) => number;
}

const geometry = ({ left }: Car) => measure(left.corner);
const mm = (metres: number): number => 1000 * metres;
const tyreOf = ({ tyre }: Car) => valueOf(parseTyre(tyre));
const file = ({ id }: Car): unknown => CAR_FILES.get(`${id}.json`);
const number = (car: Car, ...way: readonly string[]): number => Number(valueAt(file(car), way));
const hubOf = (car: Car) =>
  valueOf(solve(valueOf(readCornerDocument(valueAt(file(car), ['left']))))).hub;

const ROWS: readonly Row[] = [
  {
    what: 'inclination',
    unit: '°',
    least: 9,
    most: 15.5,
    // Widened below by 1°: double arms with both joints inside the rim stand a little steeper.
    source:
      'Gillespie 1992 ch. 8: 10 to 15; Reimpell et al. 2002 §3.8: 11 to 15.5 (both from memory)',
    of: (car) => degrees(geometry(car).inclination),
  },
  {
    what: 'caster',
    unit: '°',
    least: 1,
    most: 10,
    source:
      'Gillespie 1992 ch. 8: 0 to 5; rear drive to 10 or 12, Heißing and Ersoy 2011 (both from memory)',
    of: (car) => degrees(geometry(car).caster),
  },
  {
    what: 'camber',
    unit: '°',
    least: -1.5,
    most: 0.5,
    source: 'common practice, no source',
    of: (car) => degrees(geometry(car).camber),
  },
  {
    what: 'scrub radius',
    unit: 'mm',
    least: -20,
    most: 80,
    source: 'Reimpell et al. 2002 §3.8 (from memory)',
    of: (car) => mm(geometry(car).scrubRadius),
  },
  {
    what: 'mechanical trail',
    unit: 'mm',
    least: 5,
    most: 45,
    source: 'common practice, no source',
    of: (car) => mm(geometry(car).trail),
  },
  {
    what: 'spindle offset',
    unit: 'mm',
    least: 50,
    most: 105,
    source: 'common practice, no source',
    of: (car) => mm(geometry(car).spindleOffset),
  },
  {
    what: 'loaded radius over half the outer diameter',
    unit: '',
    least: 0.9,
    most: 0.95,
    source: 'rule of thumb for radial tyres, 0.92 (from memory)',
    of: (car) => car.left.corner.loadedRadius / (outerDiameter(tyreOf(car)) / 2),
  },
  {
    what: 'rolling circumference over outer diameter',
    unit: '',
    least: 3.03,
    most: 3.07,
    source: 'ETRTO and WdK tables for radial tyres: about 3.05 (from memory)',
    of: (car) =>
      (2 * Math.PI * number(car, 'left', 'wheel', 'rollingRadius_mm')) /
      mm(outerDiameter(tyreOf(car))),
  },
  {
    what: 'rim width over section width',
    unit: '',
    least: 0.65,
    most: 0.9,
    source: 'ETRTO, approved rim widths of passenger-car tyres (from memory)',
    of: (car) => (25.4 * number(car, 'rimWidth_in')) / mm(sectionWidth(tyreOf(car))),
  },
  {
    what: 'wheel load over what the tyre’s load index allows',
    unit: '',
    least: 0.4,
    most: 0.95,
    source: 'common practice, no source',
    of: (car) =>
      number(car, 'frontAxleLoad_N') /
      2 /
      (GRAVITY * loadCapacity_kg(tyreOf(car).loadIndex ?? NaN)),
  },
  {
    what: 'wheel centre to lower pivot, over the rim’s radius',
    unit: '',
    least: 0.4,
    most: 1,
    source: 'common practice, no source',
    of: (car) => {
      const { wheelCentre, pivots } = car.left.corner;
      return distance(pivots.lower, wheelCentre) / (rimDiameter(tyreOf(car)) / 2);
    },
  },
  {
    what: 'rating life of the hub',
    unit: 'km',
    least: 100_000,
    most: 2_000_000,
    source: 'common practice, no source',
    of: (car) => hubOf(car)?.L10_km ?? NaN,
  },
];

describe.each(ROWS)('$what ($least to $most $unit)', ({ least, most, of }) => {
  test.each(TRAINING_CARS)('is usual on the $name', (car) => {
    expect(of(car)).toBeGreaterThanOrEqual(least);
    expect(of(car)).toBeLessThanOrEqual(most);
  });
});

describe.each(TRAINING_CARS)('the $name agrees with itself', (car) => {
  test('half of the front axle’s load is what stands on a wheel, straight ahead', () => {
    const half = number(car, 'frontAxleLoad_N') / 2;
    const duty = valueAt(file(car), ['left', 'hub', 'duty', 0, 'vertical_N']);
    const vertical = valueAt(file(car), ['left', 'forces', 4, 'force_N']);
    expect([duty, vertical]).toEqual([half, half]);
  });

  test('its track is the distance between its wheel centres', () => {
    const { left, right } = car;
    const apart = mm(left.corner.wheelCentre.y - right.corner.wheelCentre.y);
    expect(apart).toBeCloseTo(number(car, 'track_mm'), 6);
  });

  test('its hub is loaded no more than its rating is made for', () => {
    expect(hubOf(car)?.withinScope).toBe(true);
  });

  test('on double arms the upper pivot lies inside the rim, on a strut far above it', () => {
    const { corner, anatomy } = car.left;
    const above = mm(corner.pivots.upper.z - corner.wheelCentre.z);
    if (car.suspension === 'double-arm') expect(above).toBeLessThan(anatomy.rimRadius);
    else expect(above).toBeGreaterThan(anatomy.tyreRadius);
  });
});
