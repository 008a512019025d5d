import { fromSI, toSI } from '#core/units/convert.ts';
import type { Part } from './kind.ts';

type Asked = Pick<Part<never>, 'unit' | 'decimals' | 'sum'>;

/** Shares of a product that are always forgiven: in the first steps of a chain, and from the third on. */
const EARLY_STEP = 0.01;
const LATE_STEP = 0.02;

/**
 * Never narrower than this, in SI. A tangent rounded to three digits moves a length beside a wheel by less
 * than 0.2 mm; nobody reads an angle closer than 0.1°.
 */
const LEAST: Readonly<Record<string, number>> = {
  length: toSI(0.3, 'mm'),
  angle: toSI(0.1, 'deg'),
};

/** Margin over the worst rounding that was found. */
export const ROUNDING_MARGIN = 1.5;

/**
 * How far from the answer an entry may be, in SI: the largest of a share of the answer, what the quantity
 * is always allowed, and one and a half times what rounding can do.
 *
 * @param index place in the chain of parts, from 0
 * @param answer in SI
 * @param rounding the worst that rounding this and every earlier value can do to the answer, in SI
 */
export function toleranceOf(
  part: Pick<Part<never>, 'quantity' | 'sum'>,
  index: number,
  answer: number,
  rounding: number,
): number {
  const forgiven = index < 2 ? EARLY_STEP : LATE_STEP;
  const share = part.sum ? 0 : forgiven * Math.abs(answer);
  return Math.max(share, LEAST[part.quantity.kind] ?? 0, withMargin(rounding));
}

/** The most that rounding to the decimals asked for can change a value, in SI. */
export const halfDigit = ({ unit, decimals }: Pick<Asked, 'unit' | 'decimals'>): number =>
  toSI(0.5 * 10 ** -decimals, unit);

/**
 * The most that a careful person's written value differs from the true one, in SI: rounded to the decimals
 * asked for or to three digits, whichever is coarser.
 */
export function roundingOf(part: Asked, value: number): number {
  if (part.sum === 'exact') return 0;
  const hundreds = Math.floor(Math.log10(Math.abs(fromSI(value, part.unit)))) - 2;
  return Math.max(halfDigit(part), toSI(0.5 * 10 ** hundreds, part.unit));
}

/** What rounding may do to an entry before it counts as wrong, in SI. */
export const withMargin = (rounding: number): number => ROUNDING_MARGIN * rounding;

/** Whether two values agree. Engines may differ in the last digit of a tangent, so no limit is sharper than that. */
export const within = (tolerance: number, a: number, b: number): boolean =>
  Math.abs(a - b) <= tolerance * (1 + 1e-9);

/** The value as a careful person would write it: rounded to the decimals asked for, in SI. */
export function asWritten(
  { unit, decimals }: Pick<Asked, 'unit' | 'decimals'>,
  value: number,
): number {
  const scale = 10 ** decimals;
  return toSI(roundedUp(fromSI(value, unit) * scale) / scale, unit);
}

/** Halves go away from nought, as people round. */
const roundedUp = (value: number): number => Math.sign(value) * Math.round(Math.abs(value));
