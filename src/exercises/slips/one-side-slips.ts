import type { Earlier, Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

interface Sides<Item> {
  readonly left: (item: Item) => number;
  readonly right: (item: Item) => number;
}

/** The wrong road to a difference of left and right that takes the left from the right. */
export const rightLessLeft = <Item>({ left, right }: Sides<Item>): Slip<Item> => ({
  id: 'turned-round',
  confuses: 'left and right',
  value: (item) => right(item) - left(item),
  text: () =>
    phrase`The size fits, but left and right have changed places. It would be right for a sheet that takes the left from the right. Here it is left less right.`,
});

interface Move<Item> {
  /** How far the left pivot has to go, and where it is afterwards, counted from the lower one. */
  readonly move: (item: Item, earlier: Earlier) => number;
  readonly place: (item: Item, earlier: Earlier) => number;
  /** What would be moved on the right, and which way the axis leans now. */
  readonly moved: string;
  readonly leans: string;
}

/** The wrong roads to the movement of one upper pivot, where only the left one is moved. */
export const oneSideSlips = <Item>({
  move,
  place,
  moved,
  leans,
}: Move<Item>): readonly Slip<Item>[] => [
  {
    id: 'shared',
    confuses: 'both sides',
    value: (item, earlier) => move(item, earlier) / 2,
    text: () =>
      phrase`That is half of the way, as if both sides moved. It would be right if the right ${moved} took the other half. Only the left one is moved.`,
  },
  {
    id: 'place',
    confuses: 'place of the pivot',
    value: place,
    text: () =>
      phrase`That is the place of the pivot afterwards, counted from the lower one. It would be the movement if the axis stood upright now. It leans ${leans} already.`,
  },
];
