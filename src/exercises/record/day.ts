/** Length of a day in milliseconds. */
export const DAY_ms = 24 * 60 * 60 * 1000;

/** The number of a moment's day since 1970; where a day begins, the page knows. */
export type DayOf = (at: number) => number;

/** The number of the day in universal time. */
export const universalDay: DayOf = (at) => Math.floor(at / DAY_ms);

/**
 * The number of a written day, `2027-06-30`, counted from the first of January 1970; from 1970 to 2199.
 *
 * @returns undefined where there is no such day
 */
export function dayNumber(written: string): number | undefined {
  const [, year = NaN, month = NaN, day = NaN] =
    /^(\d{4})-(\d{2})-(\d{2})$/.exec(written)?.map(Number) ?? [];
  if (!(year >= 1970 && year < 2200) || !(month >= 1 && month <= 12)) return undefined;
  const lengths = monthLengths(year);
  if (!(day >= 1 && day <= (lengths[month - 1] ?? 0))) return undefined;
  const years = Array.from({ length: year - 1970 }, (_, i) => (isLeap(1970 + i) ? 366 : 365));
  return sum(years) + sum(lengths.slice(0, month - 1)) + day - 1;
}

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

const monthLengths = (year: number): readonly number[] =>
  [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
