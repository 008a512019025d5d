/** Digits and small letters without those that are taken for one another: 0 and o, 1 and i and l, u and v. */
const SIGNS = '0123456789abcdefghjkmnpqrstvwxyz';

/** Bytes as text that survives being read aloud, typed in capitals or broken over lines; Crockford's alphabet (from memory). */
export function toBase32(bytes: Uint8Array): string {
  let text = '';
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = ((held << 8) | byte) & 0xfff;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      text += SIGNS.charAt((held >> bits) & 31);
    }
  }
  return bits > 0 ? text + SIGNS.charAt((held << (5 - bits)) & 31) : text;
}

/** The bytes of such a text, spaces and dashes left aside; undefined where another sign stands in it. */
export function fromBase32(text: string): Uint8Array | undefined {
  const bytes: number[] = [];
  let bits = 0;
  let held = 0;
  for (const sign of plainBase32(text)) {
    const value = SIGNS.indexOf(sign);
    if (value < 0) return undefined;
    held = ((held << 5) | value) & 0xfff;
    bits += 5;
    if (bits < 8) continue;
    bits -= 8;
    bytes.push((held >> bits) & 255);
  }
  return Uint8Array.from(bytes);
}

/** The text in small signs without spaces and dashes, look-alikes put right. */
export const plainBase32 = (text: string): string =>
  text.toLowerCase().replaceAll(/[\s-]/g, '').replaceAll('o', '0').replaceAll(/[il]/g, '1');
