import { sha256 } from '@noble/hashes/sha2.js';
import { toBase32 } from './base32.ts';

const utf8 = new TextEncoder();

/** The first signs of a text's SHA-256, five bits each; up to 51 of them. */
export const digestOf = (text: string, signs: number): string =>
  toBase32(sha256(utf8.encode(text))).slice(0, signs);
