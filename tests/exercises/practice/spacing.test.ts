import { describe, expect, test } from 'vitest';
import { memoryOf } from '#exercises/practice/memory.ts';
import { dueDay } from '#exercises/practice/spacing.ts';
import type { Attempt } from '#exercises/record/attempt.ts';
import { universalDay } from '#exercises/record/day.ts';
import { attempt } from './made.ts';

const due = (attempts: readonly Attempt[], horizonDay?: number): number => {
  const memory = memoryOf(attempts, universalDay);
  if (!memory) throw new Error('nothing was tried');
  return dueDay(memory, horizonDay);
};

const withExample = (day: number): Attempt => attempt('a', day, { help: 2 });

/** Days between recalls of somebody who is right whenever asked. */
function gaps(horizonDay: number | undefined, count: number): readonly number[] {
  const attempts: Attempt[] = [];
  const found: number[] = [];
  let day = 0;
  for (let i = 0; i < count; i++) {
    attempts.push(i === 0 ? withExample(day) : attempt('a', day));
    const next = due(attempts, horizonDay);
    found.push(next - day);
    day = next;
  }
  return found;
}

describe('the first gap', () => {
  // Cepeda, Vul, Rohrer, Wixted and Pashler 2008: 20 to 40 % of a week, 5 to 10 % of a year; for a month between.
  test.each([
    [7, 1.5, 3],
    [30, 4, 8],
    [365, 18, 37],
  ])('of a horizon of %i days fits it', (horizon, least, most) => {
    const [first = NaN] = gaps(horizon, 1);
    expect(first).toBeGreaterThanOrEqual(least);
    expect(first).toBeLessThanOrEqual(most);
  });
});

test.each([7, 30, 365])('no gap leads past a horizon of %i days', (horizon) => {
  let day = 0;
  for (const gap of gaps(horizon, 12)) {
    day += gap;
    if (day >= horizon) break;
    expect(gap).toBeLessThanOrEqual((horizon - (day - gap)) / 2 + 0.5);
  }
  expect(day).toBe(horizon);
});

test('gaps grow, and stay within half a term, for who has named no day', () => {
  const found = gaps(undefined, 6);
  expect(found).toEqual(found.toSorted((a, b) => a - b));
  expect(found[1]).toBeGreaterThan(found[0] ?? NaN);
  expect(found.at(-1)).toBe(60);
});

test('a day that is over counts for nothing', () => {
  expect(due([attempt('a', 50)], 40)).toBe(due([attempt('a', 50)]));
});

test('a miss comes back the next day, help makes the gap shorter than none', () => {
  expect(due([attempt('a', 0, { firstTry: false })], 30)).toBe(1);
  const known = [0, 10, 60].map((day) => attempt('a', day));
  expect(due([...known, attempt('a', 120, { firstTry: false })], 365)).toBe(121);
  const first = attempt('a', 0);
  const unaided = due([first, attempt('a', 5)], 365);
  const hinted = due([first, attempt('a', 5, { hints: 1 })], 365);
  expect(hinted).toBeLessThan(unaided);
  expect(hinted).toBeGreaterThan(6);
});

test('ten times right in one sitting count as one recall', () => {
  const sitting = Array.from({ length: 10 }, (_, i) => attempt('a', 3, { at: 1e9 + i }));
  expect(memoryOf(sitting, universalDay)).toEqual(memoryOf(sitting.slice(0, 1), universalDay));
});

test('what is remembered hangs on the record alone, not on the order it comes in', () => {
  const attempts = [0, 2, 9, 30, 31].map((day, i) => attempt('a', day, { firstTry: i !== 2 }));
  const memory = memoryOf(attempts, universalDay);
  expect(memoryOf(attempts.toReversed(), universalDay)).toEqual(memory);
  expect(memoryOf(JSON.parse(JSON.stringify(attempts)) as Attempt[], universalDay)).toEqual(memory);
  expect(memoryOf([], universalDay)).toBeUndefined();
});
