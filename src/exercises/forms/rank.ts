/** The letters of a list, in the order in which it is printed. */
const LETTERS = 'ABCDEFGH';

export const letterOf = (index: number): string => LETTERS.charAt(index);

/** Where a letter stands, from 0; −1 where it is none. A figure counts too, from 1. */
export function placeOf(sign: string, count: number): number {
  const index = /\d/.test(sign) ? Number(sign) - 1 : LETTERS.indexOf(sign.toUpperCase());
  return index < count ? index : -1;
}

function factorial(n: number): number {
  let product = 1;
  for (let factor = 2; factor <= n; factor++) product *= factor;
  return product;
}

/** How many orders there are of so many things. */
export const orders = factorial;

/**
 * The number of an order, from 1: orders are counted as in a dictionary, A B C D first and D C B A last.
 *
 * @param order the places from 0 of all things, the first one first
 */
export function rankOf(order: readonly number[]): number {
  let rank = 1;
  for (let i = 0; i < order.length; i++) {
    const place = order[i] ?? NaN;
    // As many orders begin alike and go on with each place that is free and stands before this one.
    const each = factorial(order.length - 1 - i);
    for (let later = i + 1; later < order.length; later++)
      if ((order[later] ?? NaN) < place) rank += each;
  }
  return rank;
}

/** The places from 0, the first one first. */
export function inOrder(count: number): number[] {
  const places: number[] = [];
  for (let place = 0; place < count; place++) places.push(place);
  return places;
}

/** The order of a number: the inverse of `rankOf`. */
export function orderOf(rank: number, count: number): readonly number[] {
  const left = inOrder(count);
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
