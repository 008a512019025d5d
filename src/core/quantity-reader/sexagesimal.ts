import { found, unreadable, type Numeral } from './numeral.ts';

const SIGN = '(?<sign>[+-]?) ?';
const DEGREES = '(?<degrees>\\d{1,4})';
const SIXTIETHS = '\\d+(?:[.,]\\d+)?';
const DEGREE_MARK = '(?:°|deg\\.?|degrees?)';
const MINUTE_MARK = "(?:'|arc ?min|min\\.?|minutes?)";
const SECOND_MARK = '(?:"|arc ?sec|sec\\.?|seconds?)';

/** `1°30'`, `-0° 24'`, `1° 30' 15"`, `1 deg 30 min`, and `1°30`: behind degrees there can only be minutes. */
const MARKED = new RegExp(
  `^${SIGN}${DEGREES} ?${DEGREE_MARK} ?(?<minutes>${SIXTIETHS})` +
    `(?: ?${MINUTE_MARK}(?: ?(?<seconds>${SIXTIETHS}) ?${SECOND_MARK})?)?$`,
  'i',
);

/** `1 30` and `1:30`, which say degrees and minutes only where the field shows them. */
const UNMARKED = new RegExp(`^${SIGN}${DEGREES}[ :](?<minutes>\\d{2})$`);

const WITH_POINT = new RegExp(`^${SIGN}${DEGREES}[.,](?<minutes>[0-5]\\d)$`);

/**
 * An angle in degrees, minutes and perhaps seconds of arc, as a number of degrees. The sign is that
 * of the whole angle: −0°24′ is −0.4°. Undefined where the text is something else.
 *
 * @param text the whole text, as `plainText` leaves it
 * @param marksImplied whether the field shows degrees and minutes, so that `1 30` can stand for 1°30′
 */
export function sexagesimal(text: string, marksImplied: boolean): Numeral | undefined {
  const parts = (MARKED.exec(text) ?? (marksImplied ? UNMARKED.exec(text) : null))?.groups;
  if (parts === undefined) return undefined;
  const minutes = decimal(parts['minutes']);
  const seconds = decimal(parts['seconds']);
  if (minutes >= 60) return unreadable(`has ${minutes} minutes of arc`, 'minutes from 0 to 59');
  if (seconds >= 60) return unreadable(`has ${seconds} seconds of arc`, 'seconds from 0 to 59');
  if (parts['seconds'] !== undefined && !Number.isInteger(minutes)) {
    return unreadable(`has ${minutes} minutes and seconds too`, 'whole minutes before seconds');
  }
  const degrees = Number(parts['degrees']) + (minutes * 60 + seconds) / 3600;
  return found([parts['sign'] === '-' ? -degrees : degrees], '');
}

/**
 * The degrees that `1.30` would say if its point stood between degrees and minutes, as on many an
 * alignment sheet; undefined where it cannot.
 */
export function degreesPointMinutes(text: string): number | undefined {
  const parts = WITH_POINT.exec(text)?.groups;
  if (parts === undefined) return undefined;
  const degrees = Number(parts['degrees']) + Number(parts['minutes']) / 60;
  return parts['sign'] === '-' ? -degrees : degrees;
}

const decimal = (digits: string | undefined): number => Number((digits ?? '0').replace(',', '.'));
