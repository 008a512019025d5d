/** Seeds that pages give to everybody. */
const COMMON = ['first', 'worked-example', 'look-back'];

/** So often one draws; eight letters never run out before. */
const MOST_DRAWS = 1000;

/**
 * A seed that the learner has not met: another exercise of a kind than all before.
 *
 * @param draw a new seed, by chance
 * @throws Error where chance gives the same over and over
 */
export function unusedSeed(draw: () => string, used: Iterable<string>): string {
  const taken = new Set([...COMMON, ...used]);
  for (let round = 0; round < MOST_DRAWS; round++) {
    const seed = draw();
    if (!taken.has(seed)) return seed;
  }
  throw new Error(`no unused seed in ${MOST_DRAWS} draws`);
}
