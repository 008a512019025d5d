/** The letters of a list, in the order in which it is printed. */
const LETTERS = 'ABCDEFGH';

export const letterOf = (index: number): string => LETTERS.charAt(index);

/** Where a letter stands, from 0; −1 where it is none. A figure counts too, from 1. */
export function placeOf(sign: string, count: number): number {
  const index = /\d/.test(sign) ? Number(sign) - 1 : LETTERS.indexOf(sign.toUpperCase());
  return index < count ? index : -1;
}

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

/** How many orders there are of so many things. */
export const orders = factorial;

/**
 * The number of an order, from 1: orders are counted as in a dictionary, A B C D first and D C B A last.
 *
 * @param order the places from 0 of all things, the first one first
 */
export function rankOf(order: readonly number[]): number {
  const left = order.toSorted((a, b) => a - b);
  let rank = 0;
  for (const place of order) {
    const before = left.indexOf(place);
    rank += before * factorial(left.length - 1);
    left.splice(before, 1);
  }
  return rank + 1;
}

/** The order of a number: the inverse of `rankOf`. */
export function orderOf(rank: number, count: number): readonly number[] {
  const left = Array.from({ length: count }, (_, i) => i);
  let rest = rank - 1;
  const order: number[] = [];
  while (left.length > 0) {
    const each = factorial(left.length - 1);
    const [place = 0] = left.splice(Math.floor(rest / each), 1);
    order.push(place);
    rest %= each;
  }
  return order;
}

/** An order as it is written: `C A D B`. */
export const lettersOf = (order: readonly number[]): string => order.map(letterOf).join(' ');
