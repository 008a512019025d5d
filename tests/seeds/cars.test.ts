import { describe, expect, test } from 'vitest';
import { readCar } from '#core/car/read-car.ts';
import { faultsOf } from '#core/fault.ts';
import { measure } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { replaced, valueAt, waysInto, written, type Way } from '../core/document/edit.ts';
import { CAR_FILES, TRAINING_CARS } from '../training-cars.ts';

describe.each(Array.from(CAR_FILES))('%s', (name, file) => {
  const ways = waysInto(file);
  const faultPaths = (changed: unknown): readonly string[] =>
    faultsOf(readCar(changed)).map(({ path }) => path);
  /** Where a value can be put without a fault that names the place. */
  const unnoticed = (places: readonly Way[], value: unknown): readonly string[] =>
    places
      .filter((way) => !faultPaths(replaced(file, way, value)).includes(written(way)))
      .map(written);

  test('reads without a fault', () => {
    expect(faultPaths(file)).toEqual([]);
  });

  test('is named after its car', () => {
    expect(valueAt(file, ['id'])).toBe(name.replace('.json', ''));
  });

  test('mirrors its left corner in its right one', () => {
    expect(valueAt(file, ['right'])).toEqual(mirroredDocument(valueAt(file, ['left'])));
  });

  test('is at fault wherever a value is null', () => {
    expect(ways.length).toBeGreaterThan(100);
    expect(unnoticed(ways, null)).toEqual([]);
  });

  test('is at fault wherever a number is a billion, no number, or text', () => {
    const numbers = ways.filter((way) => typeof valueAt(file, way) === 'number');
    expect(unnoticed(numbers, 1e9)).toEqual([]);
    expect(unnoticed(numbers, NaN)).toEqual([]);
    expect(unnoticed(numbers, '1')).toEqual([]);
  });

  test('is at fault wherever a point has but two coordinates', () => {
    const points = ways.filter(
      (way) => String(way.at(-1)).endsWith('_mm') && Array.isArray(valueAt(file, way)),
    );
    expect(points.length).toBe(10);
    expect(unnoticed(points, [0, 700])).toEqual([]);
  });

  test.each(['colour', 'left.colour', 'right.hub.colour'])('is at fault with a key %s', (path) => {
    const way = path.split('.');
    const parent = valueAt(file, way.slice(0, -1)) as object;
    const more = replaced(file, way.slice(0, -1), { ...parent, colour: 1 });
    expect(faultPaths(more)).toEqual([path]);
  });

  test.each(['id', 'name', 'tyre', 'assumed', 'left', 'right.hub', 'left.axis.upper_mm'])(
    'is at fault without its %s',
    (path) => {
      const faults = faultPaths(replaced(file, path.split('.'), undefined));
      // A hub may be missing from a corner, but not from one that is drawn: the fault is the corner's.
      expect(faults).toContain(path === 'right.hub' ? 'right' : path);
    },
  );
});

describe('the training cars', () => {
  test('are several, and no two have one name', () => {
    const names = TRAINING_CARS.map(({ name }) => name);
    expect(names.length).toBeGreaterThan(3);
    expect(new Set(names).size).toBe(names.length);
  });

  test('show both suspensions and more than one drive', () => {
    expect(new Set(TRAINING_CARS.map(({ suspension }) => suspension)).size).toBe(2);
    expect(new Set(TRAINING_CARS.map(({ drive }) => drive)).size).toBeGreaterThan(1);
  });

  test('have scrub radii on both sides of nought, so that the sign means something', () => {
    const radii = TRAINING_CARS.map(({ left }) => measure(left.corner).scrubRadius);
    expect(Math.min(...radii)).toBeLessThan(-0.003);
    expect(Math.max(...radii)).toBeGreaterThan(0.003);
  });

  test.each(TRAINING_CARS)(
    '$name has a right corner that is the mirror image of its left',
    (car) => {
      expect(mirroredCorner(car.left.corner)).toEqual(car.right.corner);
      expect(car.left.anatomy).toEqual(car.right.anatomy);
    },
  );
});

const POINTS = /^(lower|upper|centre|outer|inner)_mm$/;

/** The corner document on the other side: every point's y with the other sign, and the side's name. */
function mirroredDocument(value: unknown, key = ''): unknown {
  if (value === 'left') return 'right';
  if (Array.isArray(value)) {
    const [x, y = 0, z] = value as number[];
    return POINTS.test(key) ? [x, -y, z] : value.map((member) => mirroredDocument(member));
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, member]) => [name, mirroredDocument(member, name)]),
  );
}
