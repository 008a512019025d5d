import type { Random } from '../random.ts';
import { inOrder } from './rank.ts';

/** The places of so many things, from 0, in an order that the seed decides: each order is as likely. */
export function shuffled(random: Random, count: number): readonly number[] {
  const places = inOrder(count);
  for (let last = count - 1; last > 0; last--) {
    const other = random.integer(0, last);
    const place = places[last] ?? 0;
    places[last] = places[other] ?? 0;
    places[other] = place;
  }
  return places;
}
