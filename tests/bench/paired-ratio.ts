import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** How long one thing takes, as a ratio to another measured beside it. */
export interface PairedRatio {
  /** Median of the pairs. */
  readonly ratio: number;
  /** Bootstrap 95 % interval of the median. */
  readonly low: number;
  readonly high: number;
  readonly pairs: number;
}

/** A row of a bench's table. */
export interface BenchRow extends PairedRatio {
  /** `this : that`, said in words. */
  readonly what: string;
  /** The largest ratio that will do, where there is such an aim. */
  readonly aim?: number;
}

/** A piece of work to be timed; what it returns is only there to keep it from being optimised away. */
export type Work = () => number;

const BLOCK_ms = 8;

/** Compilers work in the background, and late when the machine has other things to do. */
const WARM_UP_ms = 400;

const RESAMPLES = 2000;

/**
 * Times two pieces of work side by side, in pairs of blocks in the order A B B A, so that a machine that
 * slows down or speeds up does so for both. Only the ratio means anything.
 *
 * @param pairs 15 or more
 */
export function pairedRatio(a: Work, b: Work, pairs = 31): PairedRatio {
  const blockA = blockOf(a);
  const blockB = blockOf(b);
  const ratios = Array.from({ length: pairs }, () => {
    const [a1, b1, b2, a2] = [blockA(), blockB(), blockB(), blockA()];
    return (a1 + a2) / (b1 + b2);
  });
  const [low, high] = bootstrapInterval(ratios);
  return { ratio: median(ratios), low, high, pairs };
}

let kept = 0;

/** A block of repetitions long enough for the clock; it answers with the time of one repetition. */
function blockOf(work: Work): () => number {
  const timed = (times: number): number => {
    const start = performance.now();
    for (let time = 0; time < times; time++) kept += work();
    return performance.now() - start;
  };
  let times = 1;
  while (timed(times) < BLOCK_ms) times *= 2;
  const start = performance.now();
  while (performance.now() - start < WARM_UP_ms) timed(times);
  // Compiled work is faster: what filled a block when cold may not fill it now.
  while (timed(times) < BLOCK_ms) times *= 2;
  if (Number.isNaN(kept)) throw new Error('a piece of work has no number to show');
  return () => timed(times) / times;
}

function bootstrapInterval(values: readonly number[]): readonly [number, number] {
  const generator = xoroshiro128plus(20250101);
  const medians = Array.from({ length: RESAMPLES }, () =>
    median(values.map(() => values[uniformInt(generator, 0, values.length - 1)] ?? NaN)),
  ).sort((x, y) => x - y);
  const at = (part: number) => medians[Math.round(part * (RESAMPLES - 1))] ?? NaN;
  return [at(0.025), at(0.975)];
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((x, y) => x - y);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] ?? NaN) + (sorted[Math.ceil(middle)] ?? NaN)) / 2;
}
