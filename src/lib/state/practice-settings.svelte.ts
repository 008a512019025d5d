import type { Fault } from '#core/fault.ts';
import { dayNumber } from '#exercises/record/day.ts';
import { readSettings, USUAL_SETTINGS, type Settings } from '#exercises/practice/settings.ts';
import { Persisted } from './persisted.svelte';

/** How the learner wants to practise, remembered in this browser. */
export class PracticeSettings {
  readonly #kept = new Persisted<Settings>('practice', USUAL_SETTINGS, isSettings);

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

  /** Takes over how somebody practised in another browser. */
  take(settings: Settings): void {
    this.#kept.value = settings;
  }

  setHorizon(horizon: string | undefined): void {
    const { size, sureness, lessons } = this.all;
    this.#kept.value = { size, sureness, lessons, ...(horizon !== undefined && { horizon }) };
  }
}

function isSettings(value: unknown): value is Settings {
  const faults: Fault[] = [];
  readSettings({ value, path: '', faults });
  return faults.length === 0;
}
