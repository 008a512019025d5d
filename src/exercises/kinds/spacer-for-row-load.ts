import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { rowLoads } from '../paper/bearing.ts';
import { between } from '../paper/plausible.ts';
import { bare, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures, LINE_WITH_SPACER } from '../pictures/bearing-pictures.ts';
import { otherRowSlips } from '../slips/row-slips.ts';

interface Item {
  readonly load_N: number;
  readonly spread_mm: number;
  readonly offset_mm: number;
  readonly inboard_N: number;
}

const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
/** The load is split by the offset in a straight line: what a metre of it adds to the outboard row. */
const perMetre = (item: Item): number =>
  rowLoads({ ...item, offset_mm: 1000 }).outboard - rowLoads({ ...item, offset_mm: 0 }).outboard;
const offsetFor = (item: Item, outboard: number): number =>
  (outboard - rowLoads({ ...item, offset_mm: 0 }).outboard) / perMetre(item);

/** Backwards from what is left to the inboard row to the spacer that leaves it so much. */
export const spacerForRowLoad: Kind<Item> = {
  id: 'spacer-for-row-load',
  version: 1,
  title: 'How much is left inboard',
  lesson: 'load-line-and-rows',
  level: 3,
  draw: (random) => ({
    load_N: random.grid(3200, 6000, 50),
    spread_mm: random.grid(54, 78, 2),
    offset_mm: random.pick([-1, 1]) * random.integer(2, 10),
    inboard_N: random.grid(200, 1200, 50),
  }),
  sound: (item) =>
    between(1000 * offsetFor(item, item.load_N - item.inboard_N) - item.offset_mm, 6, 40),
  question: ({ load_N, spread_mm, offset_mm, inboard_N }) =>
    phrase`A workshop is asked how thick a spacer has been on a car, now gone. Its drawings say that with it the inboard row carried ${given(inboard_N, 'N')} at the top, standing under a wheel load of ${given(load_N, 'N')}. The pressure centres are ${mm(spread_mm)} apart, and without the spacer the load line lies ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle. Work back to the spacer.`,
  ...bearingPictures<Item>({
    given: (item) => item,
    end: (item) => ({ ...item, offset_mm: 1000 * offsetFor(item, item.load_N - item.inboard_N) }),
    parts: {
      outboard: { seen: 'row', row: 'outboard' },
      offset: LINE_WITH_SPACER.line,
      spacer: LINE_WITH_SPACER.spacer,
    },
  }),
  parts: [
    {
      id: 'outboard',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row, with the spacer',
      value: ({ load_N, inboard_N }) => load_N - inboard_N,
      sum: 'rounded',
      hint: () => phrase`The two rows carry the wheel load together.`,
      slips: [
        ...otherRowSlips<Item>(
          ({ load_N }) => load_N,
          ({ inboard_N }) => inboard_N,
        ),
        {
          id: 'whole-load',
          confuses: 'whole wheel load',
          value: ({ load_N }) => load_N,
          text: () =>
            phrase`That is the whole wheel load. It would be so with the load line right through the outboard pressure centre; here the inboard row has something left.`,
        },
      ],
      solution: ({ load_N, inboard_N }, _earlier, value) =>
        phrase`${given(load_N, 'N')} − ${given(inboard_N, 'N')} = ${rounded(value, 'N', 0)}, ${sign(value, QUANTITIES.outboardRadial)}.`,
    },
    {
      id: 'offset',
      quantity: QUANTITIES.loadLineOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Load-line offset with the spacer',
      value: (item, earlier) => offsetFor(item, step(earlier, 0)),
      hint: () =>
        phrase`The offset is worth what the outboard row carries above half of the wheel load. Over the whole spread, that makes the same moment as the wheel load with the offset.`,
      slips: [
        {
          id: 'from-inboard-centre',
          confuses: 'inboard pressure centre',
          value: (item, earlier) => (spread(item) * step(earlier, 0)) / item.load_N,
          text: () =>
            phrase`That is the distance from the inboard pressure centre. The offset is counted from the middle, so half the spread has still to be taken away.`,
        },
        {
          id: 'difference',
          confuses: 'difference of the row loads',
          value: (item, earlier) => 2 * offsetFor(item, step(earlier, 0)),
          text: () =>
            phrase`That takes the difference of the row loads, over the whole spread. From half of the wheel load one has gone up and the other down by only half of that difference.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) => offsetFor(item, step(earlier, 0)) / 2,
          text: () =>
            phrase`That lets the row hold over half of the spread. What one row gains the other loses, and together they hold over the whole spread.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -offsetFor(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The outboard row carries more than its half, so the load line lies on its side of the middle.`,
        },
      ],
      solution: (item, earlier, value) => {
        const more = step(earlier, 0) - item.load_N / 2;
        return phrase`Above half of the wheel load the outboard row carries ${rounded(step(earlier, 0), 'N', 0)} − ${bare(item.load_N / 2, 0)} = ${rounded(more, 'N', 0)}. That times the spread, over the wheel load: ${rounded(more, 'N', 0)} · ${mm(item.spread_mm)} ÷ ${given(item.load_N, 'N')} = ${rounded(value, 'mm', 2)}, ${sign(value, QUANTITIES.loadLineOffset)}.`;
      },
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 1,
      label: 'Thickness of the spacer',
      value: (item, earlier) => step(earlier, 1) - si(item.offset_mm, 'mm'),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () => phrase`From where the load line was to where it is, with the signs of both.`,
      slips: [
        {
          id: 'sign-lost',
          confuses: 'sign of the first offset',
          value: (item, earlier) => step(earlier, 1) + si(item.offset_mm, 'mm'),
          text: () =>
            phrase`That turns the sign of the first offset round. From a place inboard of the middle it is farther to the new one, from a place outboard of it less far.`,
        },
        {
          id: 'offset-itself',
          confuses: 'new offset itself',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the new offset itself, as if the load line had begun in the middle. It began beside it, and the spacer makes only the way from there.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item, earlier) => (step(earlier, 1) - si(item.offset_mm, 'mm')) / 2,
          text: () =>
            phrase`That shares the way between both wheels, as with the track of the car. On each side the spacer makes all of the way of its own load line.`,
        },
        {
          id: 'twice',
          confuses: 'track',
          value: (item, earlier) => 2 * (step(earlier, 1) - si(item.offset_mm, 'mm')),
          text: () =>
            phrase`That is by how much the two spacers together widen the track. One bearing knows only of its own spacer, which is half of it.`,
        },
      ],
      solution: ({ offset_mm }, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'mm', 2)} − ${term(mm(offset_mm))} = ${rounded(value, 'mm', 1)}.`,
    },
  ],
};
