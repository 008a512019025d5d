import { expect, test } from 'vitest';
import { standing } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const look = lookIn('front', { closeness: 'road', measures: ['lift'] });
const road = marksOf('siskin, left', {}, look).find(({ kind }) => kind === 'ground');

test.each([40, -40])('steered by %d° the dashed line is the road of straight ahead', (steer) => {
  const marks = marksOf('siskin, left', { steer }, look);
  const { points } = markOf(marks, 'path', 'road-before');
  if (road?.kind !== 'ground') throw new Error('there is no road');
  for (const { up } of points) expect(up).toBeCloseTo(road.up, 9);
});

test.each([40, -40])('steered by %d° the dimension is as long as the lift', (steer) => {
  const { from, to } = markOf(marksOf('siskin, left', { steer }, look), 'dimension', 'lift');
  const { lift } = standing(modelNamed('siskin, left'), adjusted(AS_IT_STANDS, { steer }));
  // A corner that rises has the road going away below it.
  expect(from.up - to.up).toBeCloseTo(1000 * lift, 9);
});

test('straight ahead there is nothing to measure', () => {
  expect(marksOf('siskin, left', {}, look).some(({ key }) => key === 'road-before')).toBe(false);
});
