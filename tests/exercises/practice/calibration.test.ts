import { expect, test } from 'vitest';
import { calibration, statedAnswers } from '#exercises/practice/calibration.ts';
import type { Attempt, Sureness } from '#exercises/record/attempt.ts';
import { attempt } from './made.ts';

const said = (sure: Sureness, right: number, count: number): readonly Attempt[] =>
  Array.from({ length: count }, (_, i) => attempt('a', i, { sure, firstTry: i < right }));

test('nothing is compared before twenty answers', () => {
  const some = [...said(3, 10, 19), attempt('a', 0)];
  expect(statedAnswers(some)).toBe(19);
  expect(calibration(some)).toBeUndefined();
  expect(calibration([...some, ...said(1, 0, 1)])).toHaveLength(3);
});

test('what was stated stands against what came out', () => {
  const [unsure, fairly, sure] = calibration([...said(3, 4, 15), ...said(1, 12, 12)]) ?? [];
  expect(sure).toMatchObject({ count: 15, right: 4, finding: 'too sure' });
  expect(sure?.share).toBeCloseTo(4 / 15, 12);
  expect(unsure).toMatchObject({ count: 12, right: 12, finding: 'too modest' });
  expect(fairly).toEqual({
    level: 2,
    least: 2 / 3,
    most: 0.8,
    count: 0,
    right: 0,
    finding: 'fits',
  });
});

test('a difference that may be chance is no finding', () => {
  const rows = calibration([...said(3, 7, 10), ...said(2, 5, 10)]) ?? [];
  expect(rows.map(({ finding }) => finding)).toEqual(['fits', 'fits', 'fits']);
});
