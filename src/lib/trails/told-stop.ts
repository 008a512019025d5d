import type { Job } from './jobs';

/** A stop of a trail with what its page says of it. */
export type ToldStop =
  | {
      readonly kind: 'lesson';
      readonly slug: string;
      readonly title: string;
      readonly minutes: number;
      readonly number: number;
      readonly steps: number;
      readonly why: string;
    }
  | {
      readonly kind: 'derivation';
      readonly slug: string;
      readonly title: string;
      readonly minutes: number;
    }
  | ({ readonly kind: 'job' } & Job);

/** What a stop is called where it is ticked off, and in lists. */
export const nameOf = (stop: ToldStop): string =>
  stop.kind === 'job' ? `job:${stop.id}` : `${stop.kind}:${stop.slug}`;
