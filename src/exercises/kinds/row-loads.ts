import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { rowLoads as loadsOn } from '../paper/bearing.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';
import { otherRowSlips } from '../slips/row-slips.ts';

interface Item {
  readonly load_N: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
}

const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
const offset = ({ offset_mm }: Item): number => si(offset_mm, 'mm');
const lever = (item: Item): number => spread(item) / 2 + offset(item);
/** By the core for the lever that somebody has: the load line that far outboard of the inboard pressure centre. */
const outboard = (item: Item, own: number): number =>
  loadsOn({ ...item, offset_mm: 1000 * own - item.spread_mm / 2 }).outboard;

/** A wheel load on two supports. */
export const rowLoads: Kind<Item> = {
  id: 'row-loads',
  version: 1,
  title: 'Two supports',
  lesson: 'load-line-and-rows',
  level: 1,
  draw: (random) => ({
    load_N: random.grid(3000, 7000, 50),
    offset_mm: random.pick([-1, 1]) * random.integer(3, 24),
    spread_mm: random.grid(52, 84, 2),
  }),
  sound: ({ offset_mm, spread_mm }) => Math.abs(offset_mm) < 0.42 * spread_mm,
  question: ({ load_N, offset_mm, spread_mm }) =>
    phrase`A front wheel stands still on level ground under a wheel load of ${given(load_N, 'N')}. The pressure centres of its bearing are ${mm(spread_mm)} apart, and the load line lies ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle. What do the rows carry?`,
  ...bearingPictures<Item>({
    given: (item) => item,
    end: (item) => item,
    parts: {
      lever: {
        seen: 'line',
        of: 'fromInboard',
        says: 'lever',
        to: (item, value) => 1000 * value - item.spread_mm / 2,
        taken: { 'wrong-side': 'fromOutboard', 'offset-alone': 'offset' },
      },
      outboard: { seen: 'row', row: 'outboard' },
      inboard: { seen: 'row', row: 'inboard' },
    },
  }),
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.leverAboutInboard,
      unit: 'mm',
      decimals: 0,
      label: 'From the inboard pressure centre to the load line',
      value: lever,
      sum: 'exact',
      possible: (value) => value > 0,
      hint: () =>
        phrase`From the inboard pressure centre to the middle is half of the spread. Is the load line beyond the middle, or before it?`,
      slips: [
        {
          id: 'wrong-side',
          confuses: 'inboard and outboard',
          value: (item) => spread(item) / 2 - offset(item),
          text: () =>
            phrase`That is the lever about the outboard pressure centre: inboard and outboard have changed places. From the inboard one, an offset outboard comes on top of half the spread.`,
        },
        {
          id: 'whole-spread',
          confuses: 'whole spread',
          value: (item) => spread(item) + offset(item),
          text: () =>
            phrase`That begins with the whole spread. The offset is counted from the middle between the pressure centres, and to there it is only half of it.`,
        },
        {
          id: 'offset-alone',
          confuses: 'middle between the pressure centres',
          value: (item) => Math.abs(offset(item)),
          text: () =>
            phrase`That is counted from the middle between the pressure centres. Levers are asked for about the inboard one, half the spread away from there.`,
        },
        {
          id: 'other-side-whole',
          confuses: 'outboard pressure centre',
          value: (item) => spread(item) - offset(item),
          text: () =>
            phrase`That takes the offset away from the whole spread, as if it were counted from the outboard pressure centre. It is counted from the middle between the two.`,
        },
      ],
      solution: ({ spread_mm, offset_mm }, _earlier, value) =>
        phrase`Half the spread and the offset with its sign: ${given(spread_mm / 2, 'mm')} + ${term(mm(offset_mm))} = ${rounded(value, 'mm', 0)}.`,
    },
    {
      id: 'outboard',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row',
      value: (item, earlier) => outboard(item, step(earlier, 0)),
      hint: () =>
        phrase`Balance the moments about the inboard pressure centre: the wheel load with the lever that you have found, the outboard row with the whole spread.`,
      slips: [
        {
          id: 'other-row',
          confuses: 'inboard row',
          value: (item, earlier) => item.load_N - outboard(item, step(earlier, 0)),
          text: () =>
            phrase`That is what the inboard row carries. The lever about the inboard pressure centre belongs to the outboard row: a row holds against what turns about the other one.`,
        },
        {
          id: 'upside-down',
          confuses: 'spread and lever',
          value: (item, earlier) => (item.load_N * spread(item)) / step(earlier, 0),
          text: () =>
            phrase`That has spread and lever upside down. The row holds with the long lever, the whole spread, so between the rows it needs less than the wheel load.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) => (2 * item.load_N * step(earlier, 0)) / spread(item),
          text: () =>
            phrase`That divides by half of the spread. The turning point is the inboard pressure centre, and from there the outboard row is a whole spread away.`,
        },
        {
          id: 'turned-round',
          confuses: 'top and bottom',
          value: (item, earlier) => -outboard(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but top and bottom have changed places. The load goes up through the tyre and presses the hub against the balls above it: positive, at the top.`,
        },
      ],
      solution: ({ load_N, spread_mm }, earlier, value) =>
        phrase`${given(load_N, 'N')} · ${rounded(step(earlier, 0), 'mm', 0)} ÷ ${mm(spread_mm)} = ${rounded(value, 'N', 1)}, ${sign(value, QUANTITIES.outboardRadial)}.`,
    },
    {
      id: 'inboard',
      quantity: QUANTITIES.inboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the inboard row',
      value: (item, earlier) => item.load_N - step(earlier, 1),
      sum: 'rounded',
      hint: () => phrase`The two rows carry the wheel load together, no more and no less.`,
      slips: [
        ...otherRowSlips<Item>(
          ({ load_N }) => load_N,
          (_item, earlier: Earlier) => step(earlier, 1),
        ),
        {
          id: 'same',
          confuses: 'same load on both rows',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That puts the same load on both rows. It would be so with the load line in the middle; here the row that is nearer to it carries more.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`What is left of the wheel load: ${given(load_N, 'N')} − ${rounded(step(earlier, 1), 'N', 1)} = ${rounded(value, 'N', 1)}, ${sign(value, QUANTITIES.inboardRadial)}.`,
    },
  ],
};
