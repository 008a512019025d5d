import { tick } from 'svelte';

/** Moves the focus to where work goes on, once the page has changed: what had it may be gone. */
export async function focusSoon(find: () => HTMLElement | null | undefined): Promise<void> {
  await tick();
  find()?.focus();
}
