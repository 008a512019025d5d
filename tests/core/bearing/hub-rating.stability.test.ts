import { expect, test } from 'vitest';
import { rateHub } from '#core/bearing/hub-rating.ts';
import { rowOf } from './arbitraries.ts';

/**
 * No proof of anything: these are our own numbers, kept so that a change of them is noticed. Whoever changes
 * them on purpose says why.
 */
test('the rating of a training hub has not changed', () => {
  const row = rowOf('ball', 27e3, 35);
  const rating = rateHub(
    { loadLineOffset: 0.004, spread: 0.062, outboard: row, inboard: row },
    [
      { share: 0.9, vertical: 3900, inward: 0 },
      { share: 0.05, vertical: 5200, inward: 2400 },
      { share: 0.05, vertical: 2600, inward: -900 },
    ],
    { loadedRadius: 0.3, rollingRadius: 0.306 },
  );
  const whole = (...values: readonly number[]): readonly number[] => values.map(Math.round);
  expect(whole(...rating.phases.map(({ equivalent }) => equivalent.outboard))).toEqual([
    2202, 11733, 5823,
  ]);
  expect(whole(rating.outboard.meanLoad, rating.inboard.meanLoad)).toEqual([4645, 5235]);
  expect(whole(rating.outboard.life, rating.inboard.life, rating.life)).toEqual([196, 137, 86]);
  expect(Math.round(rating.distance_km)).toBe(166137);
});
