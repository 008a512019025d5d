import { isUnaided, type Attempt } from './attempt.ts';
import { universalDay } from './day.ts';

/** So many of the latest unaided attempts count, and so many of them have to be right. */
const LATEST = 4;
const RIGHT = 3;
const DAYS = 2;

/**
 * Whether a kind is secure: three of the last four unaided attempts right at the first try, on two different
 * days at least, each with another seed. A seed worked again is no fresh evidence: only its first time counts.
 *
 * @param attempts at one kind, oldest first
 * @param dayOf tells days apart; by universal time unless the page knows where the learner is
 */
export function isSecure(
  attempts: readonly Pick<Attempt, 'seed' | 'at' | 'help' | 'hints' | 'firstTry'>[],
  dayOf: (at: number) => number = universalDay,
): boolean {
  const seeds = new Set<string>();
  const fresh = attempts.filter(({ seed }) => !seeds.has(seed) && seeds.add(seed));
  const right = fresh
    .filter(isUnaided)
    .slice(-LATEST)
    .filter(({ firstTry }) => firstTry);
  return right.length >= RIGHT && new Set(right.map(({ at }) => dayOf(at))).size >= DAYS;
}
