import { Persisted } from './persisted.svelte';

const isTicks = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((one) => typeof one === 'string');

/** Which jobs and derivations the reader has ticked off in this browser; lessons keep their own count. */
export class TrailTicks {
  readonly #ticked = new Persisted<readonly string[]>('ticked', [], isTicks);

  has(name: string): boolean {
    return this.#ticked.value.includes(name);
  }

  set(name: string, done: boolean): void {
    const others = this.#ticked.value.filter((one) => one !== name);
    this.#ticked.value = done ? [...others, name] : others;
  }
}
