import { dueDay } from '#exercises/practice/spacing.ts';
import { memoryOf } from '#exercises/practice/memory.ts';
import type { Attempt } from '#exercises/record/attempt.ts';
import { isSecure } from '#exercises/record/secure.ts';
import { dayInWords, localDay } from '$lib/state/local-day';

/** How a kind stands, in a few words: `secure, again on 3 March 2027`. */
export function standingWords(
  attempts: readonly Attempt[],
  horizonDay: number | undefined,
  now: number,
): string {
  const memory = memoryOf(attempts, localDay);
  if (!memory) return 'not tried yet';
  const times = attempts.length === 1 ? 'tried once' : `tried ${attempts.length} times`;
  const due = dueDay(memory, horizonDay);
  const again = due <= now ? 'due today' : `again ${dayInWords(due, now)}`;
  return `${isSecure(attempts, localDay) ? 'secure' : times}, ${again}`;
}
