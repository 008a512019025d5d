import { QUANTITIES } from '#core/quantities.ts';
import { setting } from '../forms/setting.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { rowLoads } from '../paper/bearing.ts';
import { between } from '../paper/plausible.ts';
import { bare, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';
import type { BearingPicture } from '../pictures/picture.ts';

interface Item {
  readonly load_N: number;
  readonly spread_mm: number;
  readonly offset_mm: number;
  readonly wanted_N: number;
}

const at = (item: Item, move: number): number =>
  rowLoads({ ...item, offset_mm: item.offset_mm + 1000 * move }).outboard;
const now = (item: Item): number => at(item, 0);
/** Newtons that the outboard row gains for a metre. */
const perMetre = ({ load_N, spread_mm }: Item): number => load_N / si(spread_mm, 'mm');
const moveFor = (item: Item, more: number): number => more / perMetre(item);

const picture = (item: Item, move: number): BearingPicture => ({
  scene: 'bearing',
  offset_mm: item.offset_mm + 1000 * move,
  ...(move !== 0 && { before_mm: item.offset_mm }),
  spread_mm: item.spread_mm,
  measures: [],
  load: 'wheel load',
});

/** The wheel goes in or out on its hub until the outboard row carries what it is to carry. */
export const setLoadLine: Kind<Item> = {
  id: 'set-load-line',
  version: 1,
  title: 'Move the load line',
  lesson: 'load-line-and-rows',
  level: 3,
  draw: (random) => {
    const load_N = random.grid(3200, 6000, 50);
    const spread_mm = random.grid(54, 78, 2);
    const offset_mm = random.pick([-1, 1]) * random.integer(3, 16);
    // Where the load line is to go: some way from where it is, and between the pressure centres.
    const goal_mm = offset_mm - Math.sign(offset_mm) * random.integer(7, 32);
    const wanted_N = 50 * Math.round((load_N * (0.5 + goal_mm / spread_mm)) / 50);
    return { load_N, spread_mm, offset_mm, wanted_N };
  },
  sound: (item) => between(item.wanted_N, 0.1 * item.load_N, 0.9 * item.load_N),
  pattern: (item) => (item.wanted_N > now(item) ? 'more outboard' : 'less outboard'),
  question: ({ load_N, spread_mm, offset_mm, wanted_N }) =>
    phrase`In the drawing the wheel load of ${given(load_N, 'N')} goes up through the middle of the tyre. The pressure centres of the two rows are ${mm(spread_mm)} apart, and the load line lies ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle. Move the wheel on its hub until the outboard row carries ${given(wanted_N, 'N')}.`,
  picture: (item) => picture(item, 0),
  solved: (item) => picture(item, moveFor(item, item.wanted_N - now(item))),
  wrong: bearingPictures<Item>({
    given: (item) => item,
    end: (item) => item,
    parts: {
      'outboard-now': { seen: 'row', row: 'outboard' },
      move: {
        seen: 'line',
        on: (item) => ({
          ...item,
          offset_mm: item.offset_mm + 1000 * moveFor(item, item.wanted_N - now(item)),
        }),
        of: 'offset',
        says: 'offset',
        to: (item, value) => item.offset_mm + 1000 * value,
      },
    },
  }).wrong,
  parts: [
    {
      id: 'outboard-now',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row as it stands',
      value: now,
      sum: 'rounded',
      hint: () =>
        phrase`Half of the wheel load, and on top the moment of the offset, held over the whole spread.`,
      slips: [
        {
          id: 'other-row',
          confuses: 'other row',
          value: (item) => item.load_N - now(item),
          text: () =>
            phrase`That is what the other row carries. The load line lies nearer to one of the rows, and that one carries more: look on which side it is.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item) => item.load_N / 2 + 2 * (now(item) - item.load_N / 2),
          text: () =>
            phrase`That holds the moment of the offset over half of the spread. What one row gains the other loses, so they hold over the whole of it.`,
        },
        {
          id: 'couple-alone',
          confuses: 'gain',
          value: (item) => now(item) - item.load_N / 2,
          text: () =>
            phrase`That is the gain from the offset alone. Half of the wheel load is carried by each row before it.`,
        },
        {
          id: 'whole-load',
          confuses: 'whole wheel load',
          value: (item) => now(item) + item.load_N / 2,
          text: () =>
            phrase`That starts from the whole wheel load. Two rows share it, so one begins with half and the offset shifts some of it.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`${given(item.load_N, 'N')} ÷ 2 = ${rounded(item.load_N / 2, 'N', 0)} for each row. The offset shifts ${given(item.load_N, 'N')} · ${bare(item.offset_mm / item.spread_mm, 6)} = ${rounded(value - item.load_N / 2, 'N', 1)} to the outboard one, which makes ${rounded(value, 'N', 0)}.`,
    },
    setting<Item>({
      id: 'move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      label: 'Movement of the wheel',
      form: {
        scale: () => ({ least: -60, most: 60, step: 0.5, start: 0 }),
        aim: {
          quantity: QUANTITIES.outboardRadial,
          unit: 'N',
          decimals: 0,
          near: 50,
        },
        target: (item, earlier) => item.wanted_N + now(item) - step(earlier, 0),
        reached: at,
        picture,
      },
      hint: () =>
        phrase`How many newtons is the outboard row to gain? Each millimetre outboard brings it the wheel load over the spread.`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'other row',
          value: (item, earlier) => -moveFor(item, item.wanted_N - step(earlier, 0)),
          text: () =>
            phrase`The way is as long as it has to be, but it brings the load to the other row. A wheel that goes outboard loads the outboard row.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) => moveFor(item, item.wanted_N - step(earlier, 0)) / 2,
          text: () =>
            phrase`That reckons with half of the spread, so each millimetre seems to shift twice as much as it does. The rows hold over the whole spread.`,
        },
        {
          id: 'from-the-middle',
          confuses: 'middle of the rows',
          value: (item) => moveFor(item, item.wanted_N - item.load_N / 2),
          text: () =>
            phrase`That is where the load line has to be, counted from the middle of the rows. It lies off the middle already; the wheel goes only from where it is.`,
        },
        {
          id: 'difference',
          confuses: 'difference of the rows',
          value: (item, earlier) => 2 * moveFor(item, item.wanted_N - step(earlier, 0)),
          text: () =>
            phrase`That goes twice as far as it has to. The difference of the rows changes by twice what one of them gains; the outboard row alone is to gain so much.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The outboard row is to gain ${given(item.wanted_N, 'N')} − ${term(rounded(step(earlier, 0), 'N', 1))} = ${rounded(item.wanted_N - step(earlier, 0), 'N', 1)}. A millimetre brings it ${given(item.load_N, 'N')} ÷ ${String(item.spread_mm)} = ${rounded(item.load_N / item.spread_mm, 'N', 2)}, so the wheel moves ${rounded(Math.abs(value), 'mm', 1)} ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    }),
  ],
};
