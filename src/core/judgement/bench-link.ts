import { failure, type Fault, type Outcome } from '../fault.ts';
import type { BenchDocument } from './bench-document.ts';
import { BENCH_WORDS } from './bench-words.ts';
import { packed, unpacked } from './packed-json.ts';
import { readBench } from './read-bench.ts';

const KEY = 'bench=';

/** How the bytes are made: another way needs another letter. */
const WAY = 'a';

const MODULUS = 65_521;

/**
 * What stands behind the # of a bench’s link: the whole bench, so that nothing has to be asked of any server, and two
 * bytes by which a link that was cut off or mistyped is told from a whole one.
 */
export function benchFragment(document: BenchDocument): string {
  const bytes = packed(document, BENCH_WORDS);
  const sum = checkOf(bytes);
  return KEY + WAY + toText(Uint8Array.from([...bytes, sum >> 8, sum & 255]));
}

/** The bench in a link, in its fragment alone, or in the text of a bench’s file. */
export function benchIn(text: string): Outcome<BenchDocument> {
  const written = text.replace(/^\uFEFF/, '').trim();
  const value = written.startsWith('{') ? fromFile(written) : fromLink(written);
  return value === undefined ? failure(NO_BENCH) : readBench(value);
}

/** Whether an address has a bench in it. */
export const hasBench = (text: string): boolean => text.includes(KEY);

const NO_BENCH: Fault = {
  path: '',
  wrong: 'holds no bench that can be read; a link may have been cut off on its way',
  allowed: 'the whole link of a bench, or the file of one',
};

function fromFile(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function fromLink(link: string): unknown {
  const at = link.indexOf(KEY);
  if (at < 0) return undefined;
  const [text = ''] = /^[\w-]*/.exec(link.slice(at + KEY.length)) ?? [];
  if (!text.startsWith(WAY)) return undefined;
  try {
    const all = fromText(text.slice(WAY.length));
    const bytes = all.subarray(0, -2);
    const [high = 0, low = 0] = all.subarray(-2);
    if (all.length < 3 || checkOf(bytes) !== 256 * high + low) return undefined;
    return unpacked(bytes, BENCH_WORDS);
  } catch {
    return undefined;
  }
}

const toText = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');

const fromText = (text: string): Uint8Array =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) =>
    sign.charCodeAt(0),
  );

/** A sum in which each byte weighs by its place, so that exchanged ones are found too; below 65 521. */
const checkOf = (bytes: Uint8Array): number =>
  bytes.reduce((sum, byte) => (sum * 257 + byte + 1) % MODULUS, 1);
