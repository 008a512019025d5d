import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Uniform } from '#core/uncertainty/monte-carlo.ts';

/** A seeded generator: every run of the tests draws the same. */
export function seeded(seed: number): Uniform {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}
