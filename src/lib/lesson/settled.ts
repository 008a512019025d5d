import type { Setting } from '#scenes/setting.ts';
import { getContext, setContext } from 'svelte';

const KEY = Symbol('settled');

/** For words that speak of one setting for good, whatever the figure shows: a page read without scripts. */
export const provideSettled = (setting: Setting): Setting => setContext(KEY, setting);

export const settled = (): Setting | undefined => getContext<Setting | undefined>(KEY);
