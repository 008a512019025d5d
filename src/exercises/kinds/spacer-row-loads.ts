import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { rowLoads } from '../paper/bearing.ts';
import { between } from '../paper/plausible.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures, LOAD_LINE } from '../pictures/bearing-pictures.ts';
import { otherRowSlips } from '../slips/row-slips.ts';

interface Item {
  readonly load_N: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
  readonly spacer_mm: number;
}

const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
const before = (item: Item): number => rowLoads(item).outboard;
const outboard = (item: Item, offset: number): number =>
  rowLoads({ ...item, offset_mm: 1000 * offset }).outboard;

const spaced = (item: Item): Item => ({ ...item, offset_mm: item.offset_mm + item.spacer_mm });

/** A spacer carries the load line outboard, sometimes past the outboard pressure centre. */
export const spacerRowLoads: Kind<Item> = {
  id: 'spacer-row-loads',
  version: 1,
  title: 'A spacer and two rows',
  lesson: 'load-line-and-rows',
  level: 2,
  draw: (random) => ({
    load_N: random.grid(3200, 6000, 50),
    offset_mm: random.pick([-1, 1]) * random.integer(2, 12),
    spread_mm: random.grid(54, 76, 2),
    spacer_mm: random.integer(8, 50),
  }),
  sound: ({ offset_mm, spread_mm, spacer_mm }) =>
    between(Math.abs((offset_mm + spacer_mm) / spread_mm - 0.5), 0.06, 0.4),
  pattern: ({ offset_mm, spacer_mm, spread_mm }) =>
    offset_mm + spacer_mm > spread_mm / 2 ? 'past the pressure centre' : 'between them',
  question: ({ load_N, offset_mm, spread_mm, spacer_mm }) =>
    phrase`Somebody wants spacers of ${mm(spacer_mm)} behind both front wheels. With the car’s own wheels the load line lies ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of the middle between the pressure centres, which are ${mm(spread_mm)} apart. Each wheel carries ${given(load_N, 'N')}. What will the rows carry, standing on level ground?`,
  ...bearingPictures<Item>({
    given: (item) => item,
    end: (item) => spaced(item),
    parts: {
      offset: LOAD_LINE,
      outboard: { seen: 'row', row: 'outboard' },
      inboard: { seen: 'row', row: 'inboard' },
    },
  }),
  parts: [
    {
      id: 'offset',
      quantity: QUANTITIES.loadLineOffset,
      unit: 'mm',
      decimals: 0,
      label: 'Load-line offset with the spacer',
      value: ({ offset_mm, spacer_mm }) => si(offset_mm + spacer_mm, 'mm'),
      sum: 'exact',
      hint: () =>
        phrase`The bearing stays on the carrier. Which way does the wheel’s centre plane go, and by how much?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'inset',
          value: ({ offset_mm, spacer_mm }) => si(offset_mm - spacer_mm, 'mm'),
          text: () =>
            phrase`That moves the load line inboard, as a wheel of more inset does. A spacer carries wheel and load line outboard.`,
        },
        {
          id: 'both-spacers',
          confuses: 'track',
          value: ({ offset_mm, spacer_mm }) => si(offset_mm + 2 * spacer_mm, 'mm'),
          text: () =>
            phrase`That counts both spacers, as for the track of the car. Each wheel stands on its own bearing and moves by its own spacer.`,
        },
        {
          id: 'halved',
          confuses: 'half of the spacer',
          value: ({ offset_mm, spacer_mm }) => si(offset_mm + spacer_mm / 2, 'mm'),
          text: () =>
            phrase`That counts half of the spacer. A wider rim moves its outer edge by half of the gain; a spacer moves the whole wheel, and the load line with it.`,
        },
        {
          id: 'left-in-place',
          confuses: 'load line left in place',
          value: ({ offset_mm }) => si(offset_mm, 'mm'),
          text: () =>
            phrase`That is the load line left in place. It belongs to the wheel, not to the hub: where the tyre stands on the road, there the load goes up.`,
        },
      ],
      solution: ({ offset_mm, spacer_mm }, _earlier, value) =>
        phrase`${term(mm(offset_mm))} + ${mm(spacer_mm)} = ${rounded(value, 'mm', 0)}: the load line now lies ${sign(value, QUANTITIES.loadLineOffset)} of the middle.`,
    },
    {
      id: 'outboard',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row',
      value: (item, earlier) => outboard(item, step(earlier, 0)),
      hint: () =>
        phrase`Balance the moments about the inboard pressure centre: from there the load line is half the spread and the new offset away, the outboard row a whole spread.`,
      slips: [
        {
          id: 'as-before',
          confuses: 'before the spacer',
          value: before,
          text: () =>
            phrase`That is what the outboard row carried before the spacer. The load is the same, but its line has moved nearer to the outboard row, or past it.`,
        },
        {
          id: 'other-row',
          confuses: 'inboard row',
          value: (item, earlier) => item.load_N - outboard(item, step(earlier, 0)),
          text: () =>
            phrase`That is what is left for the inboard row. The load line has gone outboard, so the outboard row is the one that gets more.`,
        },
        {
          id: 'no-half',
          confuses: 'half of the wheel load',
          value: (item, earlier) => (item.load_N * step(earlier, 0)) / spread(item),
          text: () =>
            phrase`That is what the offset adds to a row. Even with the load line in the middle each row has half of the wheel load, and that comes first.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) =>
            item.load_N / 2 + (2 * item.load_N * step(earlier, 0)) / spread(item),
          text: () =>
            phrase`That lets the offset work over half of the spread. The two rows hold against it together, a whole spread apart.`,
        },
      ],
      solution: (item, earlier, value) => {
        const lever = spread(item) / 2 + step(earlier, 0);
        return phrase`About the inboard pressure centre the load has a lever of ${rounded(lever, 'mm', 0)}, the row one of ${mm(item.spread_mm)}: ${given(item.load_N, 'N')} · ${rounded(lever, 'mm', 0)} ÷ ${mm(item.spread_mm)} = ${rounded(value, 'N', 1)}, ${sign(value, QUANTITIES.outboardRadial)}.`;
      },
    },
    {
      id: 'inboard',
      quantity: QUANTITIES.inboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the inboard row',
      value: (item, earlier) => item.load_N - step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Both rows together still make the wheel load. If one carries more than all of it, the other has to hold the hub down: then its load is at the bottom.`,
      slips: [
        ...otherRowSlips<Item>(
          ({ load_N }) => load_N,
          (_item, earlier: Earlier) => step(earlier, 1),
        ),
        {
          id: 'as-before',
          confuses: 'before the spacer',
          value: (item) => item.load_N - before(item),
          text: () =>
            phrase`That is what the inboard row carried before the spacer. What the outboard row has gained since then, this one has lost.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`${given(load_N, 'N')} − ${rounded(step(earlier, 1), 'N', 1)} = ${rounded(value, 'N', 1)}, ${sign(value, QUANTITIES.inboardRadial)}. ${value < 0 ? 'The load line is past the outboard pressure centre, and this row’s loaded side has flipped.' : 'The load line is still between the pressure centres.'}`,
    },
  ],
};
