import { expect, test } from 'vitest';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { reused } from '#scenes/paper/reused.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { trainingCar } from '../../training-cars.ts';

const look = {
  view: 'front',
  closeness: 'whole',
  measures: ['scrubRadius'],
  names: [],
  handles: [],
  units: 'metric',
} as const;

const drawing = (lowerOutboard: number) =>
  drawn(cornerScene(trainingCar('siskin').left, adjusted(AS_IT_STANDS, { lowerOutboard }), look));

test('what has not moved is the same object, what has moved is drawn anew', () => {
  const before = drawing(5);
  const after = reused(before, drawing(6));
  expect(after).toEqual(drawing(6));
  const kept = after.shapes.filter((shape) => before.shapes.includes(shape)).map(({ key }) => key);
  expect(kept).toContain('tyre');
  expect(kept).not.toContain('axis');
});

test('a first drawing stands as it is', () => {
  const first = drawing(0);
  expect(reused(undefined, first)).toBe(first);
});
