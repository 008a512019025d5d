import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Uniform } from '#core/uncertainty/monte-carlo.ts';

const TWO_TO_32 = 2 ** 32;

/** Numbers from 0 to 1, the same for the same seed: 32 bits each, more than trials of a garage need. */
export function seeded(seed: number): Uniform {
  const generator = xoroshiro128plus(seed);
  return () => (generator.next() >>> 0) / TWO_TO_32;
}
