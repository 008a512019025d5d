import type { UnitSystem } from '#core/display.ts';
import { getContext, setContext } from 'svelte';
import { Persisted } from './persisted.svelte';

const KEY = Symbol('units');

const isUnitSystem = (value: unknown): value is UnitSystem => value === 'metric' || value === 'us';

/** The units results are shown in, remembered in this browser. */
export class Units {
  readonly #choice = new Persisted<UnitSystem>('units', 'metric', isUnitSystem);

  get system(): UnitSystem {
    return this.#choice.value;
  }

  toggle(): void {
    this.#choice.value = this.#choice.value === 'metric' ? 'us' : 'metric';
  }
}

export const provideUnits = (units: Units): Units => setContext(KEY, units);

export function units(): Units {
  const found = getContext<Units | undefined>(KEY);
  if (!found) throw new Error('no units around this component');
  return found;
}
