/** An estimate with the interval that covers the truth in 95 of 100 classes. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Quantile of the normal distribution that leaves 2.5 % above it. */
const Z = 1.959964;

/**
 * A share and its 95 % interval by Wilson's score, which stays within 0 and 1 and holds for few students too.
 *
 * @param count of `n` students; 0 to n
 *
 * Source: Wilson 1927, J. Am. Stat. Assoc. 22, 209 (from memory).
 */
export function wilson(count: number, n: number): Estimate {
  const share = count / n;
  const middle = (share + (Z * Z) / (2 * n)) / (1 + (Z * Z) / n);
  const half =
    (Z / (1 + (Z * Z) / n)) * Math.sqrt((share * (1 - share)) / n + (Z * Z) / (4 * n * n));
  return { value: share, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

/**
 * A correlation's 95 % interval by Fisher's transformation: atanh r is spread nearly normally, by 1/√(n − 3).
 *
 * @param r from −1 to 1, of `n` pairs, 4 or more
 *
 * Source: Fisher 1921, Metron 1, 3 (from memory).
 */
export function fisher(r: number, n: number): Estimate {
  if (Math.abs(r) >= 1) return { value: r, low: r, high: r };
  const half = Z / Math.sqrt(n - 3);
  return {
    value: r,
    low: Math.tanh(Math.atanh(r) - half),
    high: Math.tanh(Math.atanh(r) + half),
  };
}

/** How closely two rows of numbers go together, −1 to 1; undefined where one of them does not vary. */
export function correlation(xs: readonly number[], ys: readonly number[]): number | undefined {
  const [x, y] = [mean(xs), mean(ys)];
  let [xx, yy, xy] = [0, 0, 0];
  for (const [i, one] of xs.entries()) {
    const [dx, dy] = [one - x, (ys[i] ?? NaN) - y];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return xx > NOTHING && yy > NOTHING ? xy / Math.sqrt(xx * yy) : undefined;
}

/**
 * How likely shares of three groups differ as much as these by chance alone, where all three are alike: the
 * chi-squared test of a table with two degrees of freedom, P = exp(−χ²/2).
 *
 * Source: Pearson 1900, Phil. Mag. 50, 157 (from memory).
 */
export function chanceOfThree(groups: readonly { readonly right: number; readonly n: number }[]) {
  const n = groups.reduce((sum, group) => sum + group.n, 0);
  const share = groups.reduce((sum, { right }) => sum + right, 0) / n;
  if (share <= 0 || share >= 1) return 1;
  const squares = groups.reduce(
    (sum, group) => sum + (group.right - group.n * share) ** 2 / (group.n * share * (1 - share)),
    0,
  );
  return Math.exp(-squares / 2);
}

/** Sums of squares no larger than this come from rounding. */
const NOTHING = 1e-12;

const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;
