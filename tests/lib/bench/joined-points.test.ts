import { expect, test } from 'vitest';
import type { Point } from '#core/judgement/telling.ts';
import { joinedPoints } from '../../../src/lib/bench/joined-points.ts';

const point = (id: Point['id'], place: Point['place'], text: string): Point => ({
  id,
  place,
  text,
});

test('what is said of both wheels in the same words is said once, in its first place', () => {
  expect(
    joinedPoints([
      point('hubLife', 'left', 'Shorter.'),
      point('splitRimForce', 'axle', 'More.'),
      point('hubLife', 'right', 'Shorter.'),
    ]),
  ).toEqual([
    { id: 'hubLife', place: 'both', text: 'Shorter.' },
    { id: 'splitRimForce', place: 'axle', text: 'More.' },
  ]);
});

test('what is said of one wheel, or of each in other words, stays with its wheel', () => {
  const points = [
    point('scrubRadius', 'left', 'Turns.'),
    point('scrubRadius', 'right', 'May turn.'),
    point('hubLife', 'right', 'Shorter.'),
  ];
  expect(joinedPoints(points)).toEqual(points);
});
