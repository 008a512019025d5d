import { expect, test } from 'vitest';
import { vector } from '#core/vector.ts';
import { projected, rightward } from '#scenes/plane.ts';

/** A point 10 mm ahead of, 20 mm to the left of and 30 mm above the origin. */
const POINT = vector(0.01, 0.02, 0.03);

test.each([
  ['front', 'left', { across: 20, up: 30 }],
  ['front', 'right', { across: 20, up: 30 }],
  ['side', 'left', { across: -10, up: 30 }],
  ['side', 'right', { across: 10, up: 30 }],
  ['top', 'left', { across: 20, up: -10 }],
  ['top', 'right', { across: 20, up: -10 }],
] as const)('from the %s on the %s, one who stands before the car sees %o', (view, side, place) => {
  const { across, up } = projected(view, side, POINT);
  expect(across).toBeCloseTo(place.across, 12);
  expect(up).toBeCloseTo(place.up, 12);
});

test.each([
  ['front', 'left', 1],
  ['front', 'right', -1],
  ['top', 'left', 1],
  ['top', 'right', -1],
] as const)('in the %s view of a %s corner outboard goes %i to the right', (view, side, way) => {
  const outboard = vector(0, side === 'left' ? 1 : -1, 0);
  expect(rightward(view, side)).toBe(way);
  expect(Math.sign(projected(view, side, outboard).across)).toBe(way);
});

test.each([
  ['left', -1],
  ['right', 1],
] as const)('from the side of a %s corner forward goes %i to the right', (side, way) => {
  expect(rightward('side', side)).toBe(way);
  expect(Math.sign(projected('side', side, vector(1, 0, 0)).across)).toBe(way);
});
