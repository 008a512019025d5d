/** Half bytes, written one after another. What is typed into a sheet is digits for the most part: one each. */
export class NibbleWriter {
  readonly #nibbles: number[] = [];

  put(...nibbles: readonly number[]): void {
    this.#nibbles.push(...nibbles);
  }

  bytes(): Uint8Array {
    const bytes = new Uint8Array(Math.ceil(this.#nibbles.length / 2));
    this.#nibbles.forEach((nibble, i) => {
      bytes[i >> 1] = (bytes[i >> 1] ?? 0) | (i % 2 === 0 ? nibble << 4 : nibble);
    });
    return bytes;
  }
}

/** The same, read back. */
export class NibbleReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  /** @throws RangeError at the end */
  next(): number {
    const byte = this.#bytes[this.#at >> 1];
    if (byte === undefined) throw new RangeError('the code ends too early');
    const nibble = this.#at % 2 === 0 ? byte >> 4 : byte & 15;
    this.#at += 1;
    return nibble;
  }

  /** Whether nothing but the filling of the last byte is left. */
  get ended(): boolean {
    return this.#bytes.length * 2 - this.#at < 2;
  }
}
