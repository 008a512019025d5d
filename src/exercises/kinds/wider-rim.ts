import { wheelShift } from '#core/change.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { edgesMoved } from '../paper/wheel.ts';
import { given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import type { Rim } from '../pictures/part-pictures.ts';
import { rimOf, rimsAtStrut, toldMark, wrongPlace } from '../pictures/wheel-pictures.ts';

interface Item {
  readonly oldWidth_in: number;
  readonly newWidth_in: number;
  readonly oldInset_mm: number;
  readonly newInset_mm: number;
  readonly clearance_mm: number;
}

const oldWidth = ({ oldWidth_in }: Item): number => si(oldWidth_in, 'in');
const newWidth = ({ newWidth_in }: Item): number => si(newWidth_in, 'in');
const gain = (item: Item): number => newWidth(item) - oldWidth(item);
const oldInset = ({ oldInset_mm }: Item): number => si(oldInset_mm, 'mm');
const newInset = ({ newInset_mm }: Item): number => si(newInset_mm, 'mm');
const clearance = ({ clearance_mm }: Item): number => si(clearance_mm, 'mm');

const oldRim = (item: Item): Rim => rimOf(item.oldWidth_in, item.oldInset_mm);
const innerEdge_mm = ({ middle_mm, width_mm }: Rim): number => middle_mm - width_mm / 2;
const innerMove = (item: Item): number =>
  edgesMoved(oldInset(item) - newInset(item), oldWidth(item), newWidth(item)).inner;

const rims = (item: Item, inset_mm = item.newInset_mm) =>
  rimsAtStrut(
    {
      width_in: item.oldWidth_in,
      inset_mm: item.oldInset_mm,
      clearance_mm: item.clearance_mm,
    },
    rimOf(item.newWidth_in, inset_mm),
  );

/** The inset with which the inner edge moves so far, in millimetres. */
const insetFor_mm = (item: Item, inner: number): number =>
  item.newInset_mm - 1000 * (inner - innerMove(item));

/** A wider rim takes half of its gain on each side of its middle, and the inset says where the middle goes. */
export const widerRim: Kind<Item> = {
  id: 'wider-rim',
  version: 1,
  title: 'A wider rim',
  lesson: 'spacers-and-inset',
  level: 2,
  draw: (random) => {
    const oldWidth_in = random.grid(5.5, 8, 0.5);
    const oldInset_mm = random.integer(28, 55);
    return {
      oldWidth_in,
      newWidth_in: oldWidth_in + random.grid(0.5, 2.5, 0.5),
      oldInset_mm,
      newInset_mm: oldInset_mm + random.pick([-1, -1, 1]) * random.integer(4, 24),
      clearance_mm: random.integer(12, 40),
    };
  },
  sound: (item) =>
    item.newInset_mm >= 8 && item.newInset_mm <= 62 && clearance(item) + innerMove(item) > 0.002,
  pattern: ({ oldInset_mm, newInset_mm }) => (newInset_mm > oldInset_mm ? 'more' : 'less'),
  question: ({ oldWidth_in, newWidth_in, oldInset_mm, newInset_mm, clearance_mm }) =>
    phrase`A rim ${given(oldWidth_in, 'in')} wide, of ${mm(oldInset_mm)} inset, clears the strut by ${mm(clearance_mm)} at its inner edge. It gives way to one ${given(newWidth_in, 'in')} wide, of ${mm(newInset_mm)} inset. How far does the inner edge move, and what is left of the clearance?`,
  picture: (item) => rims(item).given,
  solved: (item) => ({
    ...rims(item).after,
    measures: [
      toldMark('move', 'movement', oldInset(item) - newInset(item)),
      toldMark('clearance', 'clearance', clearance(item) + innerMove(item)),
      toldMark('innerMove', 'inner edge', innerMove(item)),
    ],
  }),
  wrong: (item, road) => {
    const inner_mm = innerEdge_mm(oldRim(item));
    switch (road.part) {
      case 'wheel-move':
        return wrongPlace(
          { ...rims(item).after, measures: [{ of: 'move', says: 'movement' }] },
          {
            road,
            at_mm: (value) => 1000 * value - item.oldInset_mm,
            from_mm: -item.oldInset_mm,
          },
        );
      case 'inner-edge':
        return wrongPlace(
          {
            ...rims(item, insetFor_mm(item, road.answer)).after,
            measures: [{ of: 'innerMove', says: 'inner edge' }],
          },
          { road, at_mm: (value) => 1000 * value + inner_mm, from_mm: inner_mm },
        );
      default:
        return wrongPlace(
          {
            ...rims(item, insetFor_mm(item, road.answer - clearance(item))).after,
            measures: [{ of: 'clearance', says: 'clearance' }],
          },
          {
            road,
            at_mm: (value) => 1000 * value + rims(item).after.strut_mm,
            from_mm: rims(item).after.strut_mm,
          },
        );
    }
  },
  parts: [
    {
      id: 'wheel-move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      decimals: 0,
      label: 'Movement of the wheel’s middle',
      value: (item) => wheelShift({ spacer: 0, inset: newInset(item) - oldInset(item) }),
      sum: 'exact',
      hint: () =>
        phrase`Inset is counted from the middle of the rim, so the width has no say in this line.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of inset',
          value: (item) => newInset(item) - oldInset(item),
          text: () =>
            phrase`The size fits, but the direction of inset is turned round. More inset draws the wheel inboard; less lets it come outboard.`,
        },
        {
          id: 'with-width',
          confuses: 'half of the width gained',
          value: (item) => oldInset(item) - newInset(item) + gain(item) / 2,
          text: () =>
            phrase`That has half of the width gained in it already, and so is the outer edge’s way. The middle of a rim stays its middle, however wide it is.`,
        },
        {
          id: 'new-inset-alone',
          confuses: 'whole inset',
          value: (item) => -newInset(item),
          text: () =>
            phrase`That takes the whole inset of the new wheel for the movement. It would be right if the old wheel had none. Count from the old inset.`,
        },
        {
          id: 'both-wheels',
          confuses: 'track',
          value: (item) => 2 * (oldInset(item) - newInset(item)),
          text: () =>
            phrase`That is how much the track changes, with both wheels together. One wheel moves by its own inset’s change.`,
        },
      ],
      solution: ({ oldInset_mm, newInset_mm }, _earlier, value) =>
        phrase`Old inset less new: ${mm(oldInset_mm)} − ${mm(newInset_mm)} = ${rounded(value, 'mm', 0)}, ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    },
    {
      id: 'inner-edge',
      quantity: OWN_QUANTITIES.innerEdgeMove,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the rim’s inner edge',
      value: (item, earlier) => edgesMoved(step(earlier, 0), oldWidth(item), newWidth(item)).inner,
      sum: 'rounded',
      hint: () =>
        phrase`The middle takes both edges along. From the middle each edge then goes its own way, by what its side of the rim has gained.`,
      slips: [
        {
          id: 'whole-gain',
          confuses: 'whole width gained',
          value: (item, earlier) => step(earlier, 0) - gain(item),
          text: () =>
            phrase`That gives the inner edge the whole width gained. It would be right for a rim widened on its inner side alone. Inset is counted from the middle, so each side takes half.`,
        },
        {
          id: 'width-alone',
          confuses: 'width alone',
          value: (item) => -gain(item) / 2,
          text: () =>
            phrase`That counts the width alone, as if the inset had stayed. The middle of the new wheel sits elsewhere, and it takes both edges along.`,
        },
        {
          id: 'move-alone',
          confuses: 'middle of the wheel',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is how far the middle of the wheel moves. It would be right for a rim of the same width. This one is wider, and its edge is farther from its middle.`,
        },
        {
          id: 'outer-edge',
          confuses: 'outer edge',
          value: (item, earlier) => step(earlier, 0) + gain(item) / 2,
          text: () =>
            phrase`That is the outer edge: on that side half of the gain goes outboard. On the inner side it goes toward the strut, so take it away.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The rim gains ${rounded(gain(item), 'mm', 1)}, half of it on each side: ${term(rounded(step(earlier, 0), 'mm', 0))} − ${rounded(gain(item) / 2, 'mm', 2)} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.innerEdgeMove)}. The outer edge goes by the sum instead, and the arch has to clear it too.`,
    },
    {
      id: 'clearance',
      quantity: OWN_QUANTITIES.clearance,
      unit: 'mm',
      decimals: 1,
      label: 'Clearance left at the inner edge',
      value: (item, earlier) => clearance(item) + step(earlier, 1),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`The strut stands inboard of the rim. Does the movement of the inner edge take it away from the strut, or toward it?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'toward the strut and away from it',
          value: (item, earlier) => clearance(item) - step(earlier, 1),
          text: () =>
            phrase`That has toward the strut and away from it turned round. An edge that moves inboard comes nearer to the strut and takes from the clearance; outboard adds to it.`,
        },
        {
          id: 'middle',
          confuses: 'middle of the wheel',
          value: (item, earlier) => clearance(item) + step(earlier, 0),
          text: () =>
            phrase`That reckons with the middle of the wheel. It would be right for a rim of the same width. This one reaches farther inboard, by half of what it has gained.`,
        },
        {
          id: 'outer-edge',
          confuses: 'outer edge',
          value: (item, earlier) => clearance(item) + step(earlier, 0) + gain(item) / 2,
          text: () =>
            phrase`That adds half of the gain, as for the outer edge and the arch. On the inner side a wider rim comes nearer to the strut.`,
        },
        {
          id: 'whole-gain',
          confuses: 'whole width gained',
          value: (item, earlier) => clearance(item) + step(earlier, 0) - gain(item),
          text: () =>
            phrase`That takes the whole width gained off the clearance. It would be right for a rim widened on its inner side alone. Half of it has gone to the outer side.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${mm(item.clearance_mm)} + ${term(rounded(step(earlier, 1), 'mm', 1))} = ${rounded(value, 'mm', 1)}. Tyre, balance weights, full lock and full travel all need their part of it.`,
    },
  ],
};
