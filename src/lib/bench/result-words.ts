import {
  directionWord,
  numberText,
  shownAsZero,
  unitText,
  type UnitSystem,
} from '#core/display.ts';
import type { Finding, Sure } from '#core/judgement/finding.ts';
import { judgedQuantity, type JudgedQuantity } from '#core/judgement/judged-quantities.ts';
import { TYPICAL_RANGES, type TypicalRange } from '#core/typical-ranges.ts';
import { isQuantityId } from '#core/quantities.ts';
import { writeFixed } from '#core/write-number.ts';

/** One number of a result as the table shows it. */
export interface ToldNumber {
  /** Size with its unit; without a sign where a word says it. */
  readonly size: string;
  /** The direction in one word; empty where there is none. */
  readonly word: string;
  /** The interval, with signs: `−20.1 to −4.5`; empty where the number is exact. */
  readonly interval: string;
}

/** A result with its direction in a word. */
export function told(sure: Sure, quantity: JudgedQuantity, system: UnitSystem): ToldNumber {
  const word = directionWord(sure.value, quantity, system);
  const size =
    numberText(word === '' ? sure.value : Math.abs(sure.value), quantity.kind, system) +
    unitText(quantity.kind, system);
  return { size, word, interval: intervalText(sure, quantity, system) };
}

/** A difference, with its sign: which way it goes is that of the table’s words. */
export const toldDifference = (
  sure: Sure,
  quantity: JudgedQuantity,
  system: UnitSystem,
): ToldNumber => ({
  size: signed(numberText(sure.value, quantity.kind, system)) + unitText(quantity.kind, system),
  word: '',
  interval: intervalText(sure, quantity, system),
});

/** A ratio: `1.24 times`. */
export function toldRatio({ value, least, most }: Sure): ToldNumber {
  const [from, to] = [writeFixed(least, 2), writeFixed(most, 2)];
  return {
    size: `${writeFixed(value, 2)}\u202f×`,
    word: '',
    interval: from === to ? '' : `${from} to ${to}`,
  };
}

/** Whether a change leaves a result as it was, as far as its digits are shown. */
export function staysAsItWas({ id, difference }: Finding, system: UnitSystem): boolean {
  const { kind } = judgedQuantity(id);
  return (
    shownAsZero(difference.value, kind, system) &&
    shownAsZero(difference.least, kind, system) &&
    shownAsZero(difference.most, kind, system)
  );
}

/** The interval that holds about 95 cases of 100: `−20.1 to −4.5`. */
function intervalText({ least, most }: Sure, { kind }: JudgedQuantity, system: UnitSystem): string {
  const [from, to] = [least, most].map((end) => numberText(end, kind, system));
  return from === to ? '' : `${from} to ${to}`;
}

const signed = (number: string): string =>
  /^[1-9]|^0.*[1-9]/.test(number) ? `+${number}` : number;

/** What is usual on cars for a result, where that is known. */
const usualOf = ({ id }: Pick<Finding, 'id'>): TypicalRange | undefined =>
  isQuantityId(id) ? TYPICAL_RANGES[id] : undefined;

/** The usual range as words: `usual −15.0 to 15.0 mm`. */
export function usualText(id: Finding['id'], system: UnitSystem): string {
  const range = usualOf({ id });
  if (range === undefined) return '';
  const { kind } = judgedQuantity(id);
  return `usual ${numberText(range.least, kind, system)} to ${numberText(range.most, kind, system)}${unitText(kind, system)}`;
}
