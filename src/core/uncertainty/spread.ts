/** What many trials of one result come to. */
export interface Spread {
  readonly mean: number;
  /** Standard deviation of the trials: the standard uncertainty. */
  readonly standard: number;
  /** Ends of the interval that holds the asked share of the trials, as many below it as above. */
  readonly least: number;
  readonly most: number;
}

/**
 * Mean, standard deviation and the interval with equal tails of trials: with q = pM trials in it, from the r-th to
 * the (r + q)-th in order of size, r = (M − q)/2.
 *
 * @param trials of one result; at least 2
 * @param share p that the interval holds, above 0 and below 1
 * @throws RangeError for fewer trials or another share
 *
 * Source: JCGM 101:2008, 7.6 and 7.7.
 */
export function spreadOf(trials: Float64Array, share = 0.95): Spread {
  const count = trials.length;
  if (count < 2 || !(share > 0 && share < 1)) {
    throw new RangeError(`${count} trials, share ${share}; allowed: 2 or more, between 0 and 1`);
  }
  const mean = trials.reduce((sum, y) => sum + y, 0) / count;
  const squares = trials.reduce((sum, y) => sum + (y - mean) ** 2, 0);
  const within = Math.min(count - 1, Math.round(share * count));
  const first = Math.floor((count - within) / 2);
  return {
    mean,
    standard: Math.sqrt(squares / (count - 1)),
    least: ofRank(trials, first),
    most: ofRank(trials, Math.min(count - 1, first + within)),
  };
}

/**
 * The value that would stand at a place if all were in order of size, without putting all in order: parts are
 * split about a middle one until the place is in a part of its own.
 *
 * Source: Hoare, Algorithm 65, Find, Communications of the ACM 4 (1961), 321 (from memory).
 */
function ofRank(of: Float64Array, rank: number): number {
  const values = of.slice();
  const at = (i: number): number => values[i] ?? NaN;
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const middle = at((low + high) >> 1);
    let [i, j] = [low, high];
    while (i <= j) {
      while (at(i) < middle) i += 1;
      while (middle < at(j)) j -= 1;
      if (i <= j) {
        [values[i], values[j]] = [at(j), at(i)];
        i += 1;
        j -= 1;
      }
    }
    if (rank <= j) high = j;
    else if (rank >= i) low = i;
    else break;
  }
  return at(rank);
}

/** The share of trials above a limit, from 0 to 1: how likely the result is to lie there. */
export function shareAbove(trials: Float64Array, limit = 0): number {
  let above = 0;
  for (const y of trials) if (y > limit) above += 1;
  return above / trials.length;
}
