import { expect, test } from 'vitest';
import { dayNumber, DAY_ms } from '#exercises/record/day.ts';

test.each(['1970-01-01', '1999-12-31', '2000-02-29', '2024-02-29', '2026-11-28', '2100-03-01'])(
  '%s has the number that the calendar of the language gives it',
  (written) => {
    expect(dayNumber(written)).toBe(Date.parse(`${written}T00:00Z`) / DAY_ms);
  },
);

test.each([
  '2023-02-29',
  '2100-02-29',
  '2026-13-01',
  '2026-00-10',
  '2026-04-31',
  '26-1-1',
  '',
  'now',
  '9999-01-01',
])('%j is no day', (written) => {
  expect(dayNumber(written)).toBeUndefined();
});
