import { onMount } from 'svelte';
import { parsed, remember, remembered, storageKey } from './storage';

/**
 * A small value remembered in this browser. Where storage is forbidden or holds nonsense, it is the default and
 * lives as long as the page. Read after the first paint, so that the page wakes up as the server drew it.
 */
export class Persisted<Value> {
  #value: Value = $state.raw() as Value;
  readonly #key: string;

  constructor(key: string, fallback: Value, valid: (value: unknown) => value is Value) {
    this.#key = key;
    this.#value = fallback;
    onMount(() => {
      const take = (stored: unknown): void => {
        if (valid(stored)) this.#value = stored;
      };
      take(remembered(key));
      const otherTab = (event: StorageEvent): void => {
        if (event.key === storageKey(key)) take(parsed(event.newValue));
      };
      addEventListener('storage', otherTab);
      return () => {
        removeEventListener('storage', otherTab);
      };
    });
  }

  get value(): Value {
    return this.#value;
  }

  set value(value: Value) {
    this.#value = value;
    remember(this.#key, value);
  }
}
