/** What a chart of lives runs over: the thickness of a spacer, or the load-line offset, moved by the inset. */
export const LIFE_OVER = { spacer: 'spacer', 'load-line': 'inset' } as const;

export type LifeOver = keyof typeof LIFE_OVER;

export const isLifeOver = (word: string): word is LifeOver => Object.hasOwn(LIFE_OVER, word);
