import type { DerivationFacts } from '$lib/lesson/derivation';
import type { LessonFacts } from '$lib/lesson/lesson';
import { job } from './jobs';
import type { Stop } from './trails';

/** How long a trail takes, in minutes. */
export interface TrailTime {
  /** Lessons as their authors give them, each exercise once, and derivations. */
  readonly read: number;
  /** More rounds of the exercises, until all of them are secure. */
  readonly secure: number;
  /** At a car. */
  readonly atCar: number;
}

/** Secure is three right in four; one round is in the lesson’s own time. */
const MORE_ROUNDS = 2;
/** What a round of one kind takes: a guess, which nobody has timed yet. */
const ROUND_MINUTES = 4;

/** The time that some stops take together; those that are not there yet take none. */
export function trailTime(
  stops: readonly Stop[],
  lessons: readonly Pick<LessonFacts, 'slug' | 'minutes' | 'practice'>[],
  derivations: readonly Pick<DerivationFacts, 'slug' | 'minutes'>[],
): TrailTime {
  let read = 0;
  let atCar = 0;
  const kinds = new Set<string>();
  for (const stop of stops) {
    if (stop.kind === 'job') atCar += job(stop.id).minutes;
    else if (stop.kind === 'derivation')
      read += derivations.find(({ slug }) => slug === stop.slug)?.minutes ?? 0;
    else {
      const found = lessons.find(({ slug }) => slug === stop.slug);
      read += found?.minutes ?? 0;
      for (const kind of found?.practice ?? []) kinds.add(kind);
    }
  }
  return { read, secure: kinds.size * MORE_ROUNDS * ROUND_MINUTES, atCar };
}

/** A time as one says it, to the quarter of an hour: `2¼ hours`, `45 minutes`. */
export function hoursText(minutes: number): string {
  const quarters = Math.round(minutes / 15);
  if (quarters < 4) return `${Math.max(quarters, 1) * 15} minutes`;
  const hours = Math.floor(quarters / 4);
  const part = ['', '¼', '½', '¾'][quarters % 4] ?? '';
  return `${hours}${part} ${hours === 1 && part === '' ? 'hour' : 'hours'}`;
}
