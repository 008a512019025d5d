import type { QuantityId } from '#core/quantities.ts';
import { getContext, setContext } from 'svelte';

/** The quantity under the pointer or the focus: its prose, its row, its marks in the figure light up together. */
export interface Linked {
  quantity: QuantityId | undefined;
  /** The same of an action and its reaction, by the name that their marks share. */
  pair: string | undefined;
}

const KEY = Symbol('linked');

export function provideLinked(): Linked {
  const linked = $state<Linked>({ quantity: undefined, pair: undefined });
  return setContext(KEY, linked);
}

/** The nearest provided link; a figure on its own has one for itself. */
export const linked = (): Linked =>
  getContext<Linked | undefined>(KEY) ?? { quantity: undefined, pair: undefined };
