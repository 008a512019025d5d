import { dayNumber } from '#exercises/record/day.ts';
import type { LessonWishes } from '#exercises/practice/kinds-in-mix.ts';
import { Persisted } from './persisted.svelte';

/** How the learner wants to practise. */
export interface Settings {
  /** The day by which it is to be known, as `2027-06-30`. */
  readonly horizon?: string;
  /** Exercises in a set. */
  readonly size: number;
  /** Whether to ask how sure one is before the answer is told. */
  readonly sureness: boolean;
  /** Which lessons to ask about, where that is not to follow from what has been read. */
  readonly lessons: LessonWishes;
}

export const SIZES = [3, 6, 10, 15] as const;

const USUAL: Settings = { size: 6, sureness: false, lessons: {} };

/** How the learner wants to practise, remembered in this browser. */
export class PracticeSettings {
  readonly #kept = new Persisted<Settings>('practice', USUAL, isSettings);

  get all(): Settings {
    return this.#kept.value;
  }

  get horizonDay(): number | undefined {
    return this.all.horizon === undefined ? undefined : dayNumber(this.all.horizon);
  }

  get size(): number {
    return this.all.size;
  }

  get sureness(): boolean {
    return this.all.sureness;
  }

  change(some: Partial<Settings>): void {
    this.#kept.value = { ...this.all, ...some };
  }

  setHorizon(horizon: string | undefined): void {
    const { size, sureness, lessons } = this.all;
    this.#kept.value = { size, sureness, lessons, ...(horizon !== undefined && { horizon }) };
  }
}

function isSettings(value: unknown): value is Settings {
  if (typeof value !== 'object' || value === null) return false;
  const { horizon, size, sureness, lessons } = value as Record<string, unknown>;
  return (
    (horizon === undefined || (typeof horizon === 'string' && dayNumber(horizon) !== undefined)) &&
    SIZES.some((one) => one === size) &&
    typeof sureness === 'boolean' &&
    typeof lessons === 'object' &&
    lessons !== null &&
    Object.values(lessons).every((wish) => typeof wish === 'boolean')
  );
}
