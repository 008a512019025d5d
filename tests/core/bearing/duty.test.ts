import { describe, expect, test } from 'vitest';
import { meanLoad, shareFaults } from '#core/bearing/duty.ts';

describe('mean load', () => {
  test('of one steady load is that load', () => {
    expect(meanLoad([{ share: 1, load: 3000 }], 3)).toBeCloseTo(3000, 9);
  });

  test('of a load that acts half the time is 0.7937 of it: the cube root of a half', () => {
    const steps = [
      { share: 0.5, load: 1000 },
      { share: 0.5, load: 0 },
    ];
    expect(meanLoad(steps, 3)).toBeCloseTo(793.7, 1);
  });

  test('is above the plain mean: hard phases weigh more than their share', () => {
    const steps = [
      { share: 0.9, load: 1000 },
      { share: 0.1, load: 5000 },
    ];
    expect(meanLoad(steps, 3)).toBeGreaterThan(0.9 * 1000 + 0.1 * 5000);
  });
});

describe('the shares of a duty cycle', () => {
  test('add up to 1', () => {
    expect(shareFaults([0.9, 0.05, 0.05])).toEqual([]);
    expect(shareFaults([1])).toEqual([]);
  });

  test('may be thirds written with six digits', () => {
    expect(shareFaults([0.333333, 0.333333, 0.333333])).toEqual([]);
  });

  test.each([
    { shares: [0.9, 0.05, 0.06], wrong: 'has shares that add up to 1.01' },
    { shares: [0.333, 0.333, 0.333], wrong: 'has shares that add up to 0.999' },
    { shares: [], wrong: 'has shares that add up to 0' },
    { shares: [1.5, -0.5], wrong: 'has a share of 1.5' },
    { shares: [0.5, Number.NaN], wrong: 'has a share of NaN' },
  ])('that are $shares are a fault: the duty $wrong', ({ shares, wrong }) => {
    const faults = shareFaults(shares);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ path: '', wrong });
  });
});
