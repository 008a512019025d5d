import type { Earlier, Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

/** The wrong roads that a load of the second row shares, once the first is known. */
export const otherRowSlips = <Item>(
  load: (item: Item) => number,
  first: (item: Item, earlier: Earlier) => number,
): readonly Slip<Item>[] => [
  {
    id: 'added',
    confuses: 'sum of the row loads',
    value: (item, earlier) => load(item) + first(item, earlier),
    text: () =>
      phrase`That adds the first row’s load to the wheel load. It is the other way about: the sum of the row loads is the wheel load, so take the known one away from it.`,
  },
  {
    id: 'turned-round',
    confuses: 'top and bottom',
    value: (item, earlier) => first(item, earlier) - load(item),
    text: () =>
      phrase`The size fits, but top and bottom have changed places. Positive is a row that is loaded at the top, as both are under a wheel that stands between its rows.`,
  },
  {
    id: 'half',
    confuses: 'half of the wheel load',
    value: (item) => load(item) / 2,
    text: () =>
      phrase`That is half of the wheel load, as if it stood midway between the pressure centres. The first row’s share says that it does not.`,
  },
];
