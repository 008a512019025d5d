import { sha256 } from '@noble/hashes/sha2.js';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/** Where an exercise's numbers come from. Whole numbers only, so that every engine draws the same. */
export interface Random {
  /** A whole number from `least` to `most`, both included. */
  integer(least: number, most: number): number;
  /** A multiple of `step` from `least` to `most`, both included; the bounds are multiples of it too. */
  grid(least: number, most: number, step: number): number;
  /** One of the choices, each as likely. */
  pick<Choice>(choices: readonly [Choice, ...Choice[]]): Choice;
}

const utf8 = new TextEncoder();

/**
 * The random numbers of a text: the first 128 bits of its SHA-256 as the state of a xoroshiro128+ generator.
 * The same text gives the same numbers, on every machine, for ever.
 */
export function randomOf(text: string): Random {
  const view = hashOf(bytesOf(text));
  const state = [view.getInt32(0), view.getInt32(4), view.getInt32(8), view.getInt32(12)];
  const generator = xoroshiro128plusFromState(state);
  const integer = (least: number, most: number): number => uniformInt(generator, least, most);
  return {
    integer,
    grid: (least, most, step) => integer(Math.round(least / step), Math.round(most / step)) * step,
    pick: (choices) => choices[integer(0, choices.length - 1)] ?? choices[0],
  };
}

const START = sha256.create();
const hasher = sha256.create();
const hash = new Uint8Array(hasher.outputLen);
const hashed = new DataView(hash.buffer);

/** The SHA-256 of some bytes, until the next one is asked for: hashes are many, and one hasher does for all. */
function hashOf(bytes: Uint8Array): DataView {
  START._cloneInto(hasher);
  hasher.update(bytes).digestInto(hash);
  return hashed;
}

/** A text in UTF-8. Seeds are short and hardly ever leave ASCII, where a loop is faster than the encoder. */
function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code > 0x7f) return utf8.encode(text);
    bytes[i] = code;
  }
  return bytes;
}
