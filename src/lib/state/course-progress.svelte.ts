import { getContext, setContext } from 'svelte';
import { Persisted } from './persisted.svelte';

const KEY = Symbol('course progress');

type Reached = Readonly<Record<string, number>>;

const isReached = (value: unknown): value is Reached =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((step) => Number.isInteger(step) && (step as number) >= 1);

/** How far each lesson has been read in this browser: the farthest step, by the lesson's address. */
export class CourseProgress {
  readonly #reached = new Persisted<Reached>('reached', {}, isReached);

  farthest(slug: string): number {
    return this.#reached.value[slug] ?? 0;
  }

  /** The farthest step of every lesson that has been begun. */
  get all(): Reached {
    return this.#reached.value;
  }

  reach(slug: string, step: number): void {
    if (step > this.farthest(slug)) this.#reached.value = { ...this.#reached.value, [slug]: step };
  }

  erase(): void {
    this.#reached.value = {};
  }
}

export const provideCourseProgress = (progress: CourseProgress): CourseProgress =>
  setContext(KEY, progress);

export function courseProgress(): CourseProgress {
  const found = getContext<CourseProgress | undefined>(KEY);
  if (!found) throw new Error('no course progress around this component');
  return found;
}
