import { describe, expect, test } from 'vitest';
import { rateHub } from '#core/bearing/hub-rating.ts';
import type { Hub } from '#core/bearing/hub.ts';
import { rowOf } from './arbitraries.ts';

const row = rowOf('ball', 27e3, 35);
const hub: Hub = { loadLineOffset: 0, spread: 0.06, outboard: row, inboard: row };
const radii = { loadedRadius: 0.3, rollingRadius: 0.306 };
const straight = { share: 1, vertical: 4000, inward: 0 };

describe('rating of a hub', () => {
  test('straight ahead each row has the life of half the wheel load', () => {
    const { outboard, inboard } = rateHub(hub, [straight], radii);
    expect(outboard.meanLoad).toBeCloseTo(2000, 9);
    expect(outboard.life).toBeCloseTo(13.5 ** 3, 6);
    expect(inboard).toEqual(outboard);
  });

  test('a load line moved outboard by a spacer shortens the life', () => {
    const spaced = rateHub({ ...hub, loadLineOffset: 0.015 }, [straight], radii);
    expect(spaced.life).toBeLessThan(rateHub(hub, [straight], radii).life);
  });

  test('an equal number of turns to both sides does not cancel: every turn costs life', () => {
    const duty = [
      { share: 0.8, vertical: 4000, inward: 0 },
      { share: 0.1, vertical: 4000, inward: 1500 },
      { share: 0.1, vertical: 4000, inward: -1500 },
    ];
    expect(rateHub(hub, duty, radii).life).toBeLessThan(rateHub(hub, [straight], radii).life);
  });

  test('a mean load above half a row’s rating puts the whole answer out of scope', () => {
    const weak = { ...hub, inboard: rowOf('ball', 3.9e3, 35) };
    const rating = rateHub(weak, [straight], radii);
    expect(rating.inboard.withinScope).toBe(false);
    expect(rating.outboard.withinScope).toBe(true);
    expect(rating.withinScope).toBe(false);
  });

  test('without any load the hub lives for ever', () => {
    const rating = rateHub(hub, [{ share: 1, vertical: 0, inward: 0 }], radii);
    expect(rating.life).toBe(Infinity);
    expect(rating.withinScope).toBe(true);
  });

  test('the phases come back in order, with their shares', () => {
    const duty = [
      { share: 0.25, vertical: 5000, inward: 0 },
      { share: 0.75, vertical: 3000, inward: 0 },
    ];
    const { phases } = rateHub(hub, duty, radii);
    expect(phases.map(({ share }) => share)).toEqual([0.25, 0.75]);
    expect(phases.map(({ radial }) => radial.outboard)).toEqual([2500, 1500]);
  });
});

describe('a mistake in the program', () => {
  test('is a duty whose shares do not add up to 1', () => {
    expect(() => rateHub(hub, [{ ...straight, share: 0.9 }], radii)).toThrow(RangeError);
    expect(() => rateHub(hub, [], radii)).toThrow(RangeError);
  });

  test('is a length that is not more than 0', () => {
    expect(() => rateHub({ ...hub, spread: 0 }, [straight], radii)).toThrow(RangeError);
    expect(() => rateHub(hub, [straight], { ...radii, loadedRadius: -0.3 })).toThrow(RangeError);
    expect(() => rateHub(hub, [straight], { ...radii, rollingRadius: NaN })).toThrow(RangeError);
  });
});
