import type { Quantity } from '#core/quantities.ts';
import type { Earlier, Part, Slip } from '../kind.ts';
import type { Phrase } from '../phrase.ts';
import type { Picture } from '../pictures/picture.ts';
import type { Option } from './form.ts';
import { kept } from './kept.ts';
import { inOrder, orderOf, rankOf } from './rank.ts';

/** One of several, with what is said to somebody who took it where it was not right. */
export interface Choice<Item> {
  readonly id: string;
  readonly words: (item: Item) => Phrase;
  readonly confuses: string;
  readonly text: (item: Item) => Phrase;
  readonly picture?: (item: Item) => Picture;
}

/** What a choosing part is made of. */
interface Choosing<Item> extends Pick<Part<Item>, 'id' | 'label' | 'hint' | 'weight'> {
  /** What is chosen, such as `cause of the reading`. */
  readonly name: string;
  readonly form?: 'choice' | 'mark';
  readonly choices: readonly Choice<Item>[];
  /** The places of the choices, from 0, in the order in which this item lists them. */
  readonly listed: (item: Item) => readonly number[];
  /** The id of the right one. */
  readonly right: (item: Item, earlier: Earlier) => string;
  readonly solution: (item: Item, earlier: Earlier) => Phrase;
}

/** What has no size: a letter stands for it. */
const inAList = (name: string): Quantity => ({ name, symbol: '', kind: 'share' });

/** A part that is answered by choosing one of several; every other one is a slip of its own. */
export function choosing<Item>(part: Choosing<Item>): Part<Item> {
  const { choices, listed, right, name, form = 'choice', ...rest } = part;
  const index = new Map(choices.map(({ id }, i) => [id, i]));
  /** Letters count from 1. */
  const letter = (item: Item, id: string): number => listed(item).indexOf(index.get(id) ?? -1) + 1;
  return {
    ...rest,
    quantity: inAList(name),
    unit: 'ratio',
    decimals: 0,
    form: {
      kind: form,
      count: (item) => listed(item).length,
      options: (item) =>
        listed(item).flatMap((at): Option[] => {
          const choice = choices[at];
          return choice ? [{ id: choice.id, words: choice.words(item) }] : [];
        }),
    },
    value: (item, earlier) => letter(item, right(item, earlier)),
    slips: choices.map(({ id, confuses, text, picture }): Slip<Item> => ({
      id,
      confuses,
      // Where it is the right one, it is no slip; where the item does not list it, nobody can take it.
      value: (item, earlier) => (right(item, earlier) === id ? NaN : letter(item, id) || NaN),
      text,
      ...(picture && { picture }),
    })),
  };
}

/** The id of the option that a value of a choosing part stands for; undefined where it is none. */
export const chosen = (
  choices: readonly { readonly id: string }[],
  listed: readonly number[],
  value: number,
): string | undefined => choices[listed[value - 1] ?? -1]?.id;

/** A wrong order: what it was sorted by. */
export interface OrderSlip<Item> {
  readonly id: string;
  readonly confuses: string;
  /** The size by which somebody sorted, of each thing in the order of the list. */
  readonly by: (item: Item) => readonly number[];
  readonly text: (item: Item) => Phrase;
}

interface Ordering<Item> extends Pick<Part<Item>, 'id' | 'label' | 'hint' | 'weight'> {
  readonly name: string;
  readonly first: string;
  readonly last: string;
  readonly options: (item: Item) => readonly Option[];
  /** What decides, of each thing in the order of the list: the largest comes first. */
  readonly by: (item: Item) => readonly number[];
  readonly slips: readonly OrderSlip<Item>[];
  readonly solution: (item: Item, order: readonly number[]) => Phrase;
}

/** The places of sizes, from 0, with the largest first. */
export function largestFirst(sizes: readonly number[]): readonly number[] {
  const places = inOrder(sizes.length);
  // Lists are short: how many stand before each is soon counted.
  for (let i = 0; i < sizes.length; i++) {
    const size = sizes[i] ?? NaN;
    let before = 0;
    for (let j = 0; j < sizes.length; j++) {
      const other = sizes[j] ?? NaN;
      if (other > size || (other === size && j < i)) before += 1;
    }
    places[before] = i;
  }
  return places;
}

/** A part that is answered by putting things in order, the largest first. */
export function ordering<Item extends object>(part: Ordering<Item>): Part<Item> {
  const { by, name, first, last, options, slips, solution, ...rest } = part;
  const rank = (sizes: readonly number[]): number => rankOf(largestFirst(sizes));
  const right = kept((item: Item) => rank(by(item)));
  return {
    ...rest,
    quantity: inAList(name),
    unit: 'ratio',
    decimals: 0,
    form: { kind: 'order', options, count: (item) => by(item).length, first, last },
    value: right,
    slips: slips.map(({ by: wrongly, ...slip }): Slip<Item> => ({
      ...slip,
      value: (item) => {
        const end = rank(wrongly(item));
        return end === right(item) ? NaN : end;
      },
    })),
    solution: (item, _earlier, value) => solution(item, orderOf(value, by(item).length)),
  };
}

/** Whether sizes lie so far apart that nobody has to argue about their order. */
export function wellSpaced(sizes: readonly number[], share: number): boolean {
  const ordered = sizes.toSorted((a, b) => b - a);
  const span = Math.max(...sizes.map(Math.abs));
  return ordered.every((size, i) => i === 0 || (ordered[i - 1] ?? NaN) - size >= share * span);
}
