/**
 * JSON in few bytes: keys and words of a list by their number, numbers by their decimal digits, the rest as it is. What is
 * packed with one list can be unpacked with the same list only, or with one that has grown at its end.
 */

/** What stands before each value. A byte from `WORD` on is a word of the list by itself. */
const TAG = {
  null: 0,
  false: 1,
  true: 2,
  text: 3,
  list: 4,
  record: 5,
  number: 6,
  negative: 7,
} as const;
const WORD = 8;
/** So many words have a byte of their own; the others follow after the last one. */
const ONE_BYTE_WORDS = 247;

const utf8 = new TextEncoder();

/** @throws RangeError for what is no JSON */
export function packed(value: unknown, words: readonly string[]): Uint8Array {
  const bytes: number[] = [];
  const put = (x: unknown): void => {
    if (x === null) bytes.push(TAG.null);
    else if (typeof x === 'boolean') bytes.push(x ? TAG.true : TAG.false);
    else if (typeof x === 'number') putNumber(bytes, x);
    else if (typeof x === 'string') putText(bytes, x, words);
    else if (Array.isArray(x)) {
      bytes.push(TAG.list);
      putWhole(bytes, x.length);
      x.forEach(put);
    } else if (typeof x === 'object') {
      const members = Object.entries(x).filter(([, member]) => member !== undefined);
      bytes.push(TAG.record);
      putWhole(bytes, members.length);
      for (const [key, member] of members) {
        putText(bytes, key, words);
        put(member);
      }
    } else throw new RangeError(`${typeof x} is no JSON`);
  };
  put(value);
  return Uint8Array.from(bytes);
}

/** @throws RangeError for bytes that `packed` has not made */
export function unpacked(bytes: Uint8Array, words: readonly string[]): unknown {
  const from = new Bytes(bytes);
  const value = taken(from, words, 0);
  if (!from.ended) throw new RangeError('bytes go on behind the end');
  return value;
}

/** Nothing that is kept is nested deeper; bytes from outside must not pile up calls without end. */
const DEEPEST = 20;

function taken(from: Bytes, words: readonly string[], depth: number): unknown {
  if (depth > DEEPEST) throw new RangeError('nested too deep');
  const tag = from.next();
  switch (tag) {
    case TAG.null:
      return null;
    case TAG.false:
      return false;
    case TAG.true:
      return true;
    case TAG.list:
      return Array.from({ length: from.count() }, () => taken(from, words, depth + 1));
    case TAG.record:
      return Object.fromEntries(
        Array.from({ length: from.count() }, () => {
          const key = taken(from, words, depth + 1);
          if (typeof key !== 'string') throw new RangeError('a key that is no text');
          return [key, taken(from, words, depth + 1)];
        }),
      );
    case TAG.number:
    case TAG.negative:
      return (tag === TAG.negative ? -1 : 1) * takenNumber(from);
    case TAG.text:
      return new TextDecoder('utf-8', { fatal: true }).decode(from.take(from.count()));
    default:
      return takenWord(from, tag, words);
  }
}

function putText(bytes: number[], text: string, words: readonly string[]): void {
  const at = words.indexOf(text);
  if (at < 0) {
    const letters = utf8.encode(text);
    bytes.push(TAG.text);
    putWhole(bytes, letters.length);
    bytes.push(...letters);
  } else if (at < ONE_BYTE_WORDS) bytes.push(WORD + at);
  else {
    bytes.push(WORD + ONE_BYTE_WORDS);
    putWhole(bytes, at - ONE_BYTE_WORDS);
  }
}

function takenWord(from: Bytes, tag: number, words: readonly string[]): string {
  const at = tag - WORD < ONE_BYTE_WORDS ? tag - WORD : ONE_BYTE_WORDS + from.whole();
  const word = words[at];
  if (word === undefined) throw new RangeError(`no word ${at}`);
  return word;
}

/** The shortest digits that give the number back, as JavaScript writes it, cut into a whole number and a shift. */
function putNumber(bytes: number[], x: number): void {
  if (!Number.isFinite(x)) throw new RangeError(`${x} is no JSON`);
  const [mantissa = '', exponent = '0'] = String(Math.abs(x)).split('e');
  const [whole = '', part = ''] = mantissa.split('.');
  const shift = part.length - Number(exponent);
  const digits = BigInt(whole + part) * (shift < 0 ? 10n ** BigInt(-shift) : 1n);
  bytes.push(x < 0 ? TAG.negative : TAG.number);
  putWhole(bytes, Math.max(0, shift));
  putWhole(bytes, digits);
}

/** Read back through their decimal writing, which is exact, and not by division, which is not. */
function takenNumber(from: Bytes): number {
  const shift = from.whole();
  if (shift > 400) throw new RangeError('no such number');
  return Number(`${from.big()}e-${shift}`);
}

/** Seven bits a byte, the lowest first; the eighth says that more follow. */
function putWhole(bytes: number[], x: number | bigint): void {
  let rest = BigInt(x);
  while (rest >= 128n) {
    bytes.push(Number(rest & 127n) | 128);
    rest >>= 7n;
  }
  bytes.push(Number(rest));
}

/** Bytes that are read from the first to the last. */
class Bytes {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get ended(): boolean {
    return this.#at >= this.#bytes.length;
  }

  next(): number {
    const byte = this.#bytes[this.#at];
    if (byte === undefined) throw new RangeError('bytes end too soon');
    this.#at += 1;
    return byte;
  }

  take(count: number): Uint8Array {
    const end = this.#at + count;
    if (end > this.#bytes.length) throw new RangeError('bytes end too soon');
    const part = this.#bytes.subarray(this.#at, end);
    this.#at = end;
    return part;
  }

  big(): bigint {
    let whole = 0n;
    for (let shift = 0n; ; shift += 7n) {
      if (shift > 1200n) throw new RangeError('a number without end');
      const byte = this.next();
      whole |= BigInt(byte & 127) << shift;
      if (byte < 128) return whole;
    }
  }

  whole(): number {
    const whole = Number(this.big());
    if (!Number.isSafeInteger(whole)) throw new RangeError('no such count');
    return whole;
  }

  /** How many of something follow: no more than there are bytes left. */
  count(): number {
    const count = this.whole();
    if (count > this.#bytes.length - this.#at) throw new RangeError('bytes end too soon');
    return count;
  }
}
