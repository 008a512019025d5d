import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { changed, NO_CHANGE } from '#core/change.ts';
import { spinAxis } from '#core/corner.ts';
import { rimEdges } from '#core/rim-edges.ts';
import { vector } from '#core/vector.ts';
import { trainingCar } from '../training-cars.ts';

const upright = (side: 'left' | 'right', out: number) => ({
  side,
  wheelCentre: vector(0, side === 'left' ? out : -out, 0.3),
  spin: spinAxis(side, 0, 0),
});

test('a rim reaches half its width to either side of its middle, on both sides of the car', () => {
  for (const side of ['left', 'right'] as const) {
    const { outer, inner } = rimEdges(upright(side, 0.75), 0.2);
    expect(outer).toBeCloseTo(0.85, 12);
    expect(inner).toBeCloseTo(0.65, 12);
  }
});

test('a wider rim gains as much on the outside as it loses on the inside', () => {
  const [narrow, wide] = [0.1524, 0.1778].map((width) => rimEdges(upright('left', 0.75), width));
  expect((wide?.outer ?? 0) - (narrow?.outer ?? 0)).toBeCloseTo(0.0127, 12);
  expect((wide?.inner ?? 0) - (narrow?.inner ?? 0)).toBeCloseTo(-0.0127, 12);
});

test('a spacer and as much less inset take both edges to the same place', () => {
  const { corner } = trainingCar('linnet').right;
  const spaced = rimEdges(changed(corner, { ...NO_CHANGE, spacer: 0.02 }), 0.15);
  expect(rimEdges(changed(corner, { ...NO_CHANGE, inset: -0.02 }), 0.15)).toEqual(spaced);
  expect(spaced.outer - rimEdges(corner, 0.15).outer).toBeCloseTo(0.02, 5);
});

test('camber tips the edges with the spin axis', () => {
  const leaning = { ...upright('left', 0.75), spin: spinAxis('left', radians(-3), 0) };
  const { outer, inner } = rimEdges(leaning, 0.2);
  expect(outer - inner).toBeCloseTo(0.2 * Math.cos(radians(3)), 12);
});
