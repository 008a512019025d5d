/** Coefficients of Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17. */
const P = 0.2316419;
const B = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429] as const;

/**
 * Share of a standard normal distribution that lies below z, within 7.5 in a hundred million.
 *
 * Source: Abramowitz and Stegun, 26.2.17 (from memory; held against tables).
 */
export function normalBelow(z: number): number {
  if (z < 0) return 1 - normalBelow(-z);
  const t = 1 / (1 + P * z);
  const series = B.reduceRight((sum, b) => (sum + b) * t, 0);
  return 1 - (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
}

/**
 * The chance that a nearly normal result has the sign of its best estimate, from 0.5 to 1: Φ(|y|/u).
 *
 * @param value y, and its standard uncertainty u, 0 or more, in one unit
 */
export function chanceOfSign(value: number, standard: number): number {
  if (standard === 0) return value === 0 ? 0.5 : 1;
  return normalBelow(Math.abs(value) / standard);
}
