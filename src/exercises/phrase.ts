import { valueText } from '#core/display.ts';
import type { Quantity, QuantityKind } from '#core/quantities.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { UNITS, type UnitName } from '#core/units/units.ts';
import { writeFixed, writeShortest } from '#core/write-number.ts';

/** A number inside a sentence, as it is shown; the page sets it in the figure face. */
export interface Figure {
  readonly figure: string;
}

/** Words with numbers in them. */
export type Phrase = readonly (string | Figure)[];

/**
 * Writes a phrase: strings in the template are words, slots are numbers or further words.
 *
 * @example phrase`A spacer of ${mm(20)} carries the wheel outboard.`
 */
export const phrase = (
  words: TemplateStringsArray,
  ...slots: readonly (Figure | Phrase | string)[]
): Phrase =>
  words.flatMap((text, i) => {
    const slot = slots[i];
    const pieces = slot === undefined ? [] : isPhrase(slot) ? slot : [slot];
    return [text, ...pieces].filter((piece) => piece !== '');
  });

/** The phrase as plain text. */
export const plain = (words: Phrase): string =>
  words.map((piece) => (typeof piece === 'string' ? piece : piece.figure)).join('');

/** A given, exactly as it is used: what the learner reads is what the answer is computed with. */
export const given = (value: number, unit: UnitName): Figure =>
  withUnit(writeShortest(value), unit);

export const mm = (value: number): Figure => given(value, 'mm');
export const deg = (value: number): Figure => given(value, 'deg');

/** A given with its sign in words: `12 mm outboard`. */
export const directed = (value: number, unit: UnitName, quantity: Quantity): Phrase => [
  given(Math.abs(value), unit),
  ` ${sign(value, quantity)}`,
];

/** The sign of a given in one word: `outboard`. */
export const sign = (value: number, { positive = '', negative = '' }: Quantity): string =>
  value < 0 ? negative : positive;

/** A value as a term of a sum: in brackets where it has a minus sign. */
export const term = (figure: Figure): Figure =>
  figure.figure.startsWith('\u2212') ? { figure: `(${figure.figure})` } : figure;

/** A computed value, rounded as the course shows it. */
export const computed = (si: number, kind: QuantityKind): Figure => ({
  figure: valueText(si, kind),
});

/** A computed value with a fixed count of decimals. */
export const rounded = (si: number, unit: UnitName, decimals: number): Figure =>
  withUnit(writeFixed(fromSI(si, unit), decimals), unit);

/** A number without a unit: `0.213`. */
export const bare = (value: number, decimals: number): Figure => ({
  figure: writeFixed(value, decimals),
});

/** A millimetre or degree given as SI. */
export const si = (value: number, unit: UnitName): number => toSI(value, unit);

function withUnit(number: string, unit: UnitName): Figure {
  const { symbol } = UNITS[unit];
  // A bare ratio has no symbol to keep apart.
  const space = symbol === '°' || symbol === '' ? '' : '\u202f';
  return { figure: number + space + symbol };
}

const isPhrase = (slot: Figure | Phrase | string): slot is Phrase => Array.isArray(slot);
