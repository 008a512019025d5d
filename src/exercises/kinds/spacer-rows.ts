import { ratingLife } from '#core/bearing/life.ts';
import { radialLoads, type Rows } from '#core/bearing/rows.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures, LOAD_LINE } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly load_N: number;
  readonly loadLine_mm: number;
  readonly spread_mm: number;
  readonly spacer_mm: number;
}

const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const loadLine = ({ loadLine_mm }: Item): number => si(loadLine_mm, 'mm');
const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');

/** Straight ahead: no side force, so the loaded radius has no say. */
const rowsAt = (item: Item, loadLineOffset: number): Rows<number> =>
  radialLoads({ loadLineOffset, spread: spread(item) }, { vertical: item.load_N, inward: 0 }, 1);
const before = (item: Item): number => rowsAt(item, loadLine(item)).outboard;
/** How often the load of the outboard row fits into what it is now. */
const lessLoad = (item: Item, now: number): number => before(item) / now;
/** Life of a ball row under a load, of that under the old one; the rating itself falls out. */
const lifeLeft = (item: Item, now: number): number =>
  ratingLife('ball', item.load_N, now) / ratingLife('ball', item.load_N, before(item));

/** A spacer moves the load line, one row takes more and the other less, and life goes with the cube. */
export const spacerRows: Kind<Item> = {
  id: 'spacer-rows',
  version: 1,
  title: 'A spacer over the bearing',
  lesson: 'spacers-and-inset',
  level: 3,
  draw: (random) => ({
    load_N: random.grid(3000, 6500, 50),
    loadLine_mm: random.integer(2, 12),
    spread_mm: random.integer(52, 80),
    spacer_mm: random.integer(12, 45),
  }),
  sound: () => true,
  question: ({ load_N, loadLine_mm, spread_mm, spacer_mm }) =>
    phrase`A wheel carries ${given(load_N, 'N')} straight ahead. Its centre plane, and with it the load line, lies ${mm(loadLine_mm)} outboard of the middle between the pressure centres of its two rows of balls, which are ${mm(spread_mm)} apart. A spacer ${mm(spacer_mm)} thick goes in. What do the rows carry on a straight road, and what is left of the outboard row’s rating life there?`,
  ...bearingPictures<Item>({
    given: (item) => ({ ...item, offset_mm: item.loadLine_mm }),
    end: (item) => ({ ...item, offset_mm: item.loadLine_mm + item.spacer_mm }),
    parts: {
      'load-line': LOAD_LINE,
      inboard: { seen: 'row', row: 'inboard' },
      outboard: { seen: 'row', row: 'outboard' },
    },
  }),
  parts: [
    {
      id: 'load-line',
      quantity: QUANTITIES.loadLineOffset,
      unit: 'mm',
      decimals: 0,
      label: 'Load-line offset with the spacer',
      value: (item) => loadLine(item) + spacer(item),
      sum: 'exact',
      hint: () => phrase`The bearing stays in the carrier, and the load line goes with the wheel.`,
      slips: [
        {
          id: 'left-in-place',
          confuses: 'load line left in place',
          value: loadLine,
          text: () =>
            phrase`That is the load line left in place. It goes up through the middle of the wheel, and the spacer has carried that outboard.`,
        },
        {
          id: 'wrong-way',
          confuses: 'more inset',
          value: (item) => loadLine(item) - spacer(item),
          text: () =>
            phrase`That takes the spacer away, as if the wheel had moved inboard. A wheel of more inset does that; a spacer carries it outboard.`,
        },
        {
          id: 'twice',
          confuses: 'track',
          value: (item) => loadLine(item) + 2 * spacer(item),
          text: () =>
            phrase`That counts the spacer twice. The track takes one from each side of the car; a bearing has only its own wheel.`,
        },
        {
          id: 'halved',
          confuses: 'half of the spacer',
          value: (item) => loadLine(item) + spacer(item) / 2,
          text: () =>
            phrase`That counts half of the spacer, as for the edges of a wider rim. A spacer moves the whole wheel, and the load line with all of it.`,
        },
      ],
      solution: ({ loadLine_mm, spacer_mm }, _earlier, value) =>
        phrase`The load line goes out with the wheel: ${mm(loadLine_mm)} + ${mm(spacer_mm)} = ${rounded(value, 'mm', 0)}, outboard.`,
    },
    {
      id: 'inboard',
      quantity: QUANTITIES.inboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the inboard row with the spacer',
      value: (item, earlier) => rowsAt(item, step(earlier, 0)).inboard,
      sum: 'rounded',
      hint: () =>
        phrase`Half of the load each, if the load line ran through the middle. What it lies beside the middle tips the wheel; the rows hold that over their spread, and on the far side it comes off.`,
      slips: [
        {
          id: 'other-row',
          confuses: 'outboard row',
          value: (item, earlier) => rowsAt(item, step(earlier, 0)).outboard,
          text: () =>
            phrase`That is the outboard row, with the tilting part added. The load line lies nearer to that one; on the inboard row the tilting part comes off.`,
        },
        {
          id: 'half-only',
          confuses: 'load line through the middle',
          value: ({ load_N }) => load_N / 2,
          text: () =>
            phrase`That is half of the load, as with the load line through the middle. It lies outboard of it, and the row farther from it carries less.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) =>
            item.load_N / 2 - (2 * item.load_N * step(earlier, 0)) / spread(item),
          text: () =>
            phrase`That divides by half of the spread. It would be right if one row held the tilting alone about the middle. Both rows hold it, as a couple, with the whole spread between them.`,
        },
        {
          id: 'turned-round',
          confuses: 'top and bottom',
          value: (item, earlier) => -rowsAt(item, step(earlier, 0)).inboard,
          text: () =>
            phrase`The size fits, but top and bottom have changed places. A row is loaded at the top as long as half of the load is more than the tilting part; where the tilting part is the larger one, the row is turned round.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Half of the load less the tilting part: ${given(item.load_N, 'N')} · 0.5 − ${rounded(item.load_N, 'N', 0)} · ${rounded(step(earlier, 0), 'mm', 0)} ÷ ${mm(item.spread_mm)} = ${rounded(value, 'N', 1)}, ${sign(value, QUANTITIES.inboardRadial)}.`,
    },
    {
      id: 'outboard',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row with the spacer',
      value: ({ load_N }, earlier) => load_N - step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Both rows together carry the wheel load, no more and no less: mind the sign of the other one.`,
      slips: [
        {
          id: 'signs-lost',
          confuses: 'sum of the sizes',
          value: ({ load_N }, earlier) => load_N + step(earlier, 1),
          text: () =>
            phrase`That adds the inboard row to the wheel load. The sum of the sizes is not what counts: the two loads, each with its sign, make up the wheel load.`,
        },
        {
          id: 'as-before',
          confuses: 'load before the spacer',
          value: before,
          text: () =>
            phrase`That is its load before the spacer. What the inboard row has lost since has come over to this one.`,
        },
        {
          id: 'halved',
          confuses: 'half of the load',
          value: ({ load_N }) => load_N / 2,
          text: () =>
            phrase`That is half of the load, as if the spacer touched one row only. What one row loses the other gains; only the sum does not change.`,
        },
        {
          id: 'whole-load',
          confuses: 'whole wheel load',
          value: ({ load_N }) => load_N,
          text: () =>
            phrase`That gives this row the whole wheel load. It would be right if the load line ran through its own pressure centre, and the other row carried nothing.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`The rest of the wheel load: ${given(load_N, 'N')} − ${term(rounded(step(earlier, 1), 'N', 1))} = ${rounded(value, 'N', 1)}.`,
    },
    {
      id: 'life',
      quantity: OWN_QUANTITIES.lifeOfRow,
      unit: 'percent',
      decimals: 1,
      label: 'Rating life of the outboard row straight ahead, of what it was',
      value: (item, earlier) => lifeLeft(item, step(earlier, 2)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Without a side force the more loaded row has no thrust that counts. Old load over new, and for balls to the third power.`,
      slips: [
        {
          id: 'linear',
          confuses: 'ratio of the loads',
          value: (item, earlier) => lessLoad(item, step(earlier, 2)),
          text: () =>
            phrase`That is the ratio of the loads itself, as if life went down by as much as the load goes up. It goes down much faster: to the third power for balls.`,
        },
        {
          id: 'squared',
          confuses: 'second power',
          value: (item, earlier) => lessLoad(item, step(earlier, 2)) ** 2,
          text: () =>
            phrase`That takes the second power, as for braking distances and speeds. The life of balls goes with the third power of the load.`,
        },
        {
          id: 'upside-down',
          confuses: 'new load over old',
          value: (item, earlier) => lessLoad(item, step(earlier, 2)) ** -3,
          text: () =>
            phrase`That has the new load over old, and a life that grows under more load. More load, less life: the old load goes on top.`,
        },
        {
          id: 'lost',
          confuses: 'part that is lost',
          value: (item, earlier) => 1 - lessLoad(item, step(earlier, 2)) ** 3,
          text: () =>
            phrase`That is the part that is lost. Asked for is what is left of the rating life: take it from the whole once more.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Without the spacer the row carried ${rounded(before(item), 'N', 0)}. Old over new: ${rounded(before(item), 'N', 1)} ÷ ${rounded(step(earlier, 2), 'N', 1)} = ${bare(lessLoad(item, step(earlier, 2)), 3)}, and to the third power that is ${rounded(value, 'percent', 1)}. In bends the side force tips the wheel the other way: for the whole bearing the answer hangs on how the car is driven.`,
    },
  ],
};
