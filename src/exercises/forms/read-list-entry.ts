import { plainText } from '#core/plain-text.ts';
import type { ListForm } from './form.ts';
import { letterOf, orders, placeOf, rankOf } from './rank.ts';

/** The last letter of a list. */
const lastOf = ({ count }: ListForm): string => letterOf(count - 1);

/** What may be entered: `one of the letters A to E`. */
export const askedOfList = (form: ListForm): string =>
  form.kind === 'order'
    ? `the letters A to ${lastOf(form)} in order, the ${form.first} first`
    : `one of the letters A to ${lastOf(form)}`;

/** Whether a value can be an entry of the form at all. */
export const isEntryOf = (form: ListForm, value: number): boolean =>
  Number.isInteger(value) && value >= 1 && value <= mostOf(form);

/** How many entries there can be. */
export const mostOf = ({ kind, count }: ListForm): number =>
  kind === 'order' ? orders(count) : count;

/** Reads letters: the place of the one that is chosen from 1, or the rank of an order. */
export function readListEntry(text: string, form: ListForm): number | { readonly wrong: string } {
  const { count } = form;
  const places = Array.from(plainText(text).replaceAll(/[^\p{L}\d]/gu, ''), (sign) =>
    placeOf(sign, count),
  );
  if (form.kind !== 'order') {
    const [place = -1] = places;
    return places.length === 1 && place >= 0
      ? place + 1
      : { wrong: `Choose ${askedOfList(form)}.` };
  }
  const whole = places.length === count && new Set(places).size === count && !places.includes(-1);
  return whole
    ? rankOf(places)
    : { wrong: `Each letter stands in the order once: ${askedOfList(form)}.` };
}
