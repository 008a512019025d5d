import { plainText } from '#core/plain-text.ts';
import type { Quantity } from '#core/quantities.ts';
import { problemMessage } from '#core/quantity-reader/problem-message.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import type { UnitName } from '#core/units/units.ts';
import { isList, type DrawnForm } from './forms/form.ts';
import { readListEntry } from './forms/read-list-entry.ts';

/** What stands in a field and its word switch. */
export interface Typed {
  readonly text: string;
  /** Which of the quantity's two words is chosen. */
  readonly word?: 'positive' | 'negative' | undefined;
}

/** What a field asks for. */
export interface Asked {
  readonly quantity: Quantity;
  readonly unit: UnitName;
  readonly form?: DrawnForm | undefined;
}

export type EntryReading =
  /** In SI, with its sign. */
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'problem'; readonly place: 'number' | 'word'; readonly message: string };

/**
 * Reads an entry: the number by itself, its sign from the word beside it. A typed sign may stand without the
 * word, or agree with it; where they contradict each other the person has to say which is meant. What is chosen or
 * put in order is read as letters.
 */
export function readEntry({ text, word }: Typed, { quantity, unit, form }: Asked): EntryReading {
  if (isList(form)) {
    if (text.trim() === '') return { kind: 'empty' };
    const read = readListEntry(text, form);
    return typeof read === 'number'
      ? { kind: 'value', value: read }
      : { kind: 'problem', place: 'number', message: read.wrong };
  }
  const reading = readQuantity(text, unit);
  if (reading.kind === 'empty') return { kind: 'empty' };
  if (reading.kind !== 'quantity') {
    return { kind: 'problem', place: 'number', message: problemMessage(reading) };
  }
  const { si } = reading;
  const { positive, negative } = quantity;
  if (si === 0 || positive === undefined || negative === undefined) {
    return { kind: 'value', value: si };
  }
  const sign = signTyped(text);
  if (sign === undefined && word === undefined) {
    return {
      kind: 'problem',
      place: 'word',
      // A setting has no words to choose from beside its field.
      message: form
        ? `Which way? Put + for ${positive} or − for ${negative} before the number.`
        : `Which way? Choose ${positive} or ${negative}.`,
    };
  }
  if (sign !== undefined && word !== undefined && sign !== word) {
    const said = sign === 'negative' ? `The minus says ${negative}` : `The plus says ${positive}`;
    const chosen = word === 'negative' ? negative : positive;
    return {
      kind: 'problem',
      place: 'word',
      message: `${said}, but ${chosen} is chosen. Take the sign away or choose the other word.`,
    };
  }
  return { kind: 'value', value: (sign ?? word) === 'negative' ? -Math.abs(si) : Math.abs(si) };
}

function signTyped(text: string): 'positive' | 'negative' | undefined {
  const first = plainText(text).charAt(0);
  if (first === '-') return 'negative';
  return first === '+' ? 'positive' : undefined;
}
