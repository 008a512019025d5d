import { degrees } from './angle.ts';

const MINUS = '\u2212';
const RAISED = '⁻⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * A number with a fixed count of decimals: `−0.50`. The minus sign is U+2212, and what rounds to zero
 * has none. The unit and the narrow no-break space before it are the caller's.
 *
 * @param value finite, below 1e21 in size
 * @param decimals 0 to 20, whole
 * @throws RangeError for a value or a count outside these ranges
 */
export function writeFixed(value: number, decimals: number): string {
  checkFinite(value);
  if (!(Math.abs(value) < 1e21)) throw new RangeError(`${value} has more than 21 digits`);
  checkWhole('decimals', decimals, 0, 20);
  return typeset(value.toFixed(decimals));
}

/**
 * A number with a fixed count of significant digits: `0.0150`, `173`, `29 100` as `29100`. Sizes from
 * 10¹⁵ and below 10⁻⁶ get a power of ten: `1.20·10⁻⁷`.
 *
 * @param value finite
 * @param digits 1 to 21, whole
 * @throws RangeError for a value or a count outside these ranges
 */
export function writeSignificant(value: number, digits: number): string {
  checkFinite(value);
  checkWhole('digits', digits, 1, 21);
  // Rounding first: 9.96 with two digits is 10, which has another exponent.
  const rounded = value.toExponential(digits - 1);
  const tens = Number(rounded.split('e')[1]);
  if (tens < -6 || tens >= 15) return typeset(rounded);
  return typeset(Number(rounded).toFixed(Math.max(0, digits - 1 - tens)));
}

/**
 * A number with as many digits as it takes to read the very same number back: `0.1`, `1500`. Sizes as
 * above get a power of ten, and round numbers from 10⁹ too: `1·10¹²`.
 *
 * @param value finite
 * @throws RangeError otherwise
 */
export function writeShortest(value: number): string {
  checkFinite(value);
  const plain = String(value);
  const withPower = value.toExponential();
  const shorter = Math.abs(value) >= 1e9 && withPower.length < plain.length;
  return typeset(shorter ? withPower : plain);
}

/**
 * An angle in decimal degrees: `−0.50°`.
 *
 * @param angle radians
 * @param decimals 0 to 20, whole
 */
export const writeDegrees = (angle: number, decimals: number): string =>
  `${writeFixed(degrees(angle), decimals)}°`;

/**
 * An angle in degrees and minutes of arc: `−0°24′`, `1°05′`. Rounded to whole minutes first, so that
 * there are never 60 of them.
 *
 * @param angle radians
 */
export function writeDegreesMinutes(angle: number): string {
  checkFinite(angle);
  const minutes = Math.round(Math.abs(degrees(angle)) * 60);
  const sign = angle < 0 && minutes > 0 ? MINUS : '';
  return `${sign}${Math.floor(minutes / 60)}°${String(minutes % 60).padStart(2, '0')}′`;
}

/** From JavaScript's way of writing numbers to a printed one. */
function typeset(written: string): string {
  const [digits = '', exponent] = written.split('e');
  const size = digits.replace('-', '');
  const sign = digits.startsWith('-') && /[1-9]/.test(size) ? MINUS : '';
  return sign + size + (exponent === undefined ? '' : `·10${raised(Number(exponent))}`);
}

const raised = (exponent: number): string =>
  String(exponent).replace(/[-\d]/g, (character) =>
    RAISED.charAt('-0123456789'.indexOf(character)),
  );

function checkFinite(value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is not a finite number`);
}

function checkWhole(name: string, count: number, least: number, most: number): void {
  if (Number.isInteger(count) && count >= least && count <= most) return;
  throw new RangeError(`${name} is ${count}; allowed: a whole number from ${least} to ${most}`);
}
