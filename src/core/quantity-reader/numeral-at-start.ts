import { decimalMeanings } from './decimal.ts';
import { fractionAtStart } from './fraction.ts';
import { found, unreadable, type Numeral } from './numeral.ts';

/** Digits with anything that parts them; whether it parts them properly is for `decimalMeanings` to say. */
const DIGITS = /^[\d.,]+(?:[ '][\d.,]+)*/;
const POWER_OF_TEN = /^ ?(?:e|[·x] ?10 ?(?:\^|··)) ?([+-]?\d{1,4}|[({][+-]?\d{1,4}[)}])(?![\d.,])/i;
const BARE_POWER_OF_TEN = /^10 ?(?:\^|··)/;

/**
 * Reads the number at the start of a text: a sign, then a fraction (`3/4`, `1 3/4`) or a decimal with
 * or without a power of ten (`1.2e3`, `1,5·10^3`, `1.5x10^3`, `10^6`). A value too large for a number
 * comes out as Infinity, which the caller refuses.
 *
 * @param text as `plainText` leaves it
 */
export function numeralAtStart(text: string): Numeral {
  const [matched = '', sign = ''] = /^([+-]) ?/.exec(text) ?? [];
  const unsigned = text.slice(matched.length);
  const numeral = fractionAtStart(unsigned) ?? decimalAtStart(unsigned);
  if (!numeral.ok || sign !== '-') return numeral;
  return { ...numeral, values: numeral.values.map((value) => -value) };
}

function decimalAtStart(unsigned: string): Numeral {
  const text = BARE_POWER_OF_TEN.test(unsigned) ? `1·${unsigned}` : unsigned;
  const [digits = ''] = DIGITS.exec(text) ?? [];
  if (!/\d/.test(digits)) {
    return unreadable('does not start with a number', 'one number, such as 12.5, 3/4 or 1.2e3');
  }
  const meanings = decimalMeanings(digits);
  if (meanings.length === 0) {
    return unreadable(
      'has commas, points or spaces at odd places',
      'one decimal point or comma, and digits in groups of three or in one piece',
    );
  }
  const behind = text.slice(digits.length);
  const [power = '', exponent = '0'] = POWER_OF_TEN.exec(behind) ?? [];
  const tens = exponent.replace(/[(){}]/g, '');
  return found(
    meanings.map((meaning) => Number(`${meaning}e${tens}`)),
    behind.slice(power.length),
  );
}
