import type { Earlier, Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

/** The wrong roads that every force and lever share, from the true moment in N·m. */
export const momentSlips = <Item>(
  moment: (item: Item, earlier: Earlier) => number,
): readonly Slip<Item>[] => [
  {
    id: 'wrong-way',
    confuses: 'direction',
    value: (item, earlier) => -moment(item, earlier),
    text: () =>
      phrase`The size fits, the direction does not: on the other front wheel it would be so. Look from above, where left is counterclockwise. On which side of the axis does the force push, and where does that swing the front of the wheel?`,
  },
  {
    id: 'millimetres',
    confuses: 'millimetres',
    value: (item, earlier) => 1000 * moment(item, earlier),
    text: () =>
      phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres, a thousand times smaller a number.`,
  },
  {
    id: 'both-wheels',
    confuses: 'both wheels',
    value: (item, earlier) => 2 * moment(item, earlier),
    text: () =>
      phrase`That counts the moments of both wheels together, as if they turned the same way. Here one wheel is asked for; on the rack the other one’s would pull against it.`,
  },
];
