import { refuse, type Place } from './place.ts';

/** Reads one word out of several. Answers with the first one where it is none of them. */
export function readChoice<Word extends string>(
  place: Place,
  words: readonly [Word, ...Word[]],
): Word {
  const chosen = words.find((word) => word === place.value);
  if (chosen !== undefined) return chosen;
  refuse(place, words.map((word) => JSON.stringify(word)).join(', '));
  return words[0];
}
