/** Each set of look-alikes, and the one character that stands for all of them from here on. */
const LOOK_ALIKES: readonly (readonly [RegExp, string])[] = [
  // Soft hyphens, zero-width characters and marks of writing direction, which come with copied text.
  [/[\u00AD\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/g, ''],
  // U+2010 to U+2015 hyphens and dashes, U+2212 minus and the narrow or wide forms of the hyphen.
  [/[\u2010-\u2015\u2212\uFE58\uFE63]/g, '-'],
  // Curly quotes, accents and primes: minutes of arc, feet, or groups of digits.
  [/[\u0060\u00B4\u02B9\u02BC\u2018\u2019\u2032]/g, "'"],
  [/[\u02BA\u201C\u201D\u201E\u2033]/g, '"'],
  [/''/g, '"'],
  [/[\u00BA\u02DA]/g, '°'],
  [/[\u2044\u2215]/g, '/'],
  [/[*×✕∗∙⋅•]/g, '·'],
];

/**
 * Text as typed, brought to one form: keyboards, phones and copied pages write the same number with
 * many look-alikes (thin spaces, true minus signs, primes, ½, 10³ …), and readers downstream should
 * not have to know them all. Afterwards there are only single spaces, `-`, `'`, `"`, `°`, `/`, `·`
 * for a product, `^3` for a raised 3 and ` 1/2` for ½. Letters keep their case.
 */
export function plainText(text: string): string {
  const unified = LOOK_ALIKES.reduce(
    (soFar, [lookAlike, character]) => soFar.replace(lookAlike, character),
    raisedDigitsWritten(vulgarFractionsWritten(wideFormsNarrowed(text))),
  );
  return unified.replace(/\s+/g, ' ').trim();
}

const wideFormsNarrowed = (text: string): string =>
  text.replace(/[\uFF01-\uFF5E]/g, (wide) => wide.normalize('NFKD'));

const vulgarFractionsWritten = (text: string): string =>
  text.replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize('NFKD')}`);

const raisedDigitsWritten = (text: string): string =>
  text.replace(/[⁺⁻]?[⁰¹²³⁴-⁹]+/g, (raised) => `^${raised.normalize('NFKD')}`);
