/** Letters and digits that nobody confuses when reading a seed aloud. */
const ALPHABET = 'abcdefghjkmnpqrstuvwxyz23456789';

/** A new seed of eight signs, from the browser's own randomness. */
export function freshSeed(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return Array.from(bytes, (byte) => ALPHABET[byte % ALPHABET.length]).join('');
}
