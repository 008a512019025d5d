/** The part of a lesson’s address that leads to its exercises. */
export const PRACTICE_HASH = '#practice';

/**
 * The step that an address leads to, from 1: `#step-3` is the third, and the exercises belong to the last.
 *
 * @param hash of the address, with its `#`
 * @param count how many steps the lesson has
 * @returns undefined where the address leads to no step
 */
export function stepInAddress(hash: string, count: number): number | undefined {
  if (hash === PRACTICE_HASH) return count;
  const number = Number(/^#step-(\d+)$/.exec(hash)?.[1] ?? 0);
  return number >= 1 && number <= count ? number : undefined;
}
