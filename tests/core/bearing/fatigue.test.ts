import { expect, test } from 'vitest';
import { fatigueShares } from '#core/bearing/fatigue.ts';

test('twice the load over a ninth of the way does as much as the rest of it, with balls', () => {
  const shares = fatigueShares(
    [
      { share: 8 / 9, load: 1000 },
      { share: 1 / 9, load: 2000 },
    ],
    3,
  );
  expect(shares[0]).toBeCloseTo(0.5, 12);
  expect(shares[1]).toBeCloseTo(0.5, 12);
});

test('a step without a load takes nothing, and neither does anything where no step has one', () => {
  expect(fatigueShares([{ share: 1, load: 0 }], 3)).toEqual([0]);
  expect(
    fatigueShares(
      [
        { share: 0.5, load: 0 },
        { share: 0.5, load: 800 },
      ],
      10 / 3,
    ),
  ).toEqual([0, 1]);
});
