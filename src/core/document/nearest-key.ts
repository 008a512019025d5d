import { lettersWrong } from '../units/suggest-unit.ts';

/**
 * The known key that a mistyped one was probably meant for, or undefined where nothing is near: up to a
 * third of the letters wrong, or the same word with another unit or none (`trail`, `trail_m` for `trail_mm`).
 */
export function nearestKey<Key extends string>(
  typed: string,
  known: readonly Key[],
): Key | undefined {
  const word = typed.toLowerCase();
  // Nobody means a key by a whole sentence, and measuring one would take long.
  if (word.length > 60) return undefined;
  let best: { readonly key: Key; readonly letters: number } | undefined;
  for (const key of known) {
    const meant = key.toLowerCase();
    const letters = stem(meant) === stem(word) ? 0 : lettersWrong(word, meant);
    const near = letters <= Math.max(1, Math.floor(meant.length / 3));
    if (near && (best === undefined || letters < best.letters)) best = { key, letters };
  }
  return best?.key;
}

/** The key without its unit. */
const stem = (key: string): string => key.split('_', 1)[0] ?? key;
