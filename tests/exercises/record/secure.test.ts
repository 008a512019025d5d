import { describe, expect, test } from 'vitest';
import { isSecure } from '#exercises/record/secure.ts';

type Worked = Parameters<typeof isSecure>[0][number];

const HOUR_ms = 3_600_000;

let seeds = 0;
/** An attempt on a day of the record, unaided and on a new seed unless said. */
const on = (day: number, firstTry: boolean, more: Partial<Worked> = {}): Worked => ({
  seed: `seed ${seeds++}`,
  at: (24 * day + 12) * HOUR_ms,
  help: 0,
  firstTry,
  ...more,
});

describe('a kind is secure', () => {
  test('after three successes on two days', () => {
    expect(isSecure([on(1, true), on(1, true), on(2, true)])).toBe(true);
  });

  test('after three of the last four, whatever was before', () => {
    expect(
      isSecure([on(1, false), on(1, false), on(1, true), on(2, false), on(2, true), on(2, true)]),
    ).toBe(true);
  });
});

describe('a kind is not secure', () => {
  test.each<[string, readonly Worked[]]>([
    ['after nothing', []],
    ['after ten successes in one sitting', Array.from({ length: 10 }, () => on(1, true))],
    ['after two successes', [on(1, true), on(2, true)]],
    [
      'with two misses among the last four',
      [on(1, true), on(1, true), on(2, false), on(2, true), on(3, false)],
    ],
    [
      'by successes with help',
      [on(1, true, { help: 1 }), on(2, true, { help: 1 }), on(3, true, { help: 1 })],
    ],
    [
      'by successes with hints',
      [on(1, true, { hints: 1 }), on(2, true, { hints: 2 }), on(3, true, { hints: 1 })],
    ],
    [
      'by one seed worked again and again',
      [on(1, true, { seed: 'a' }), on(2, true, { seed: 'a' }), on(3, true, { seed: 'a' })],
    ],
  ])('%s', (_, attempts) => {
    expect(isSecure(attempts)).toBe(false);
  });

  test('by a seed that was seen with help before', () => {
    const seen = on(1, true, { help: 2, seed: 'a' });
    expect(isSecure([seen, on(2, true), on(3, true), on(3, true, { seed: 'a' })])).toBe(false);
  });
});

test('days are told apart where the learner is, if the page knows', () => {
  const late = { at: 23 * HOUR_ms };
  const attempts = [on(0, true, late), on(0, true, late), on(0, true, { at: 25 * HOUR_ms })];
  expect(isSecure(attempts)).toBe(true);
  expect(isSecure(attempts, (at) => Math.floor((at + 2 * HOUR_ms) / (24 * HOUR_ms)))).toBe(false);
});
