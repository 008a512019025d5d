import { getContext, setContext } from 'svelte';
import type { Bench } from './bench.svelte';

const KEY = Symbol('bench');

export const provideBench = (bench: Bench): Bench => setContext(KEY, bench);

/** The car on the bench around a component. */
export function benchHere(): Bench {
  const found = getContext<Bench | undefined>(KEY);
  if (!found) throw new Error('no bench around this component');
  return found;
}
