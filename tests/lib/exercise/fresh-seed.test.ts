import { afterEach, expect, test, vi } from 'vitest';
import { freshSeed } from '../../../src/lib/exercise/fresh-seed.ts';

afterEach(() => vi.restoreAllMocks());

test('a seed is eight signs, whatever the random bytes are', () => {
  for (let byte = 0; byte < 256; byte++) {
    vi.spyOn(crypto, 'getRandomValues').mockImplementation((bytes) => {
      (bytes as Uint8Array).fill(byte);
      return bytes;
    });
    // Without 0 and o, 1, l and i, which are taken for one another when read aloud or copied.
    expect(freshSeed()).toMatch(/^[a-hjkmnp-z2-9]{8}$/);
  }
});

test('two seeds are not the same', () => {
  const seeds = Array.from({ length: 200 }, freshSeed);
  expect(new Set(seeds).size).toBe(200);
});
