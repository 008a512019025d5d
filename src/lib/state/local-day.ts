import { DAY_ms, type DayOf } from '#exercises/record/day.ts';

const MINUTE_ms = 60_000;

/** The number of a moment's day where the learner is. */
export const localDay: DayOf = (at) =>
  Math.floor((at - new Date(at).getTimezoneOffset() * MINUTE_ms) / DAY_ms);

/** The number of the day that it is now, where the learner is. */
export const today = (): number => localDay(Date.now());

const LONG = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});
const WEEKDAY = new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' });

/** A day in words, from where the learner stands: `today`, `tomorrow`, `on Friday`, `on 3 March 2027`. */
export function dayInWords(day: number, now: number): string {
  if (day === now) return 'today';
  if (day === now + 1) return 'tomorrow';
  if (day === now - 1) return 'yesterday';
  const date = new Date(day * DAY_ms);
  return day > now && day < now + 7 ? `on ${WEEKDAY.format(date)}` : `on ${LONG.format(date)}`;
}
