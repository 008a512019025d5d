import { largestFirst, ordering, wellSpaced } from '../forms/choosing.ts';
import { kept } from '../forms/kept.ts';
import { letterOf, orderOf } from '../forms/rank.ts';
import { shuffled } from '../forms/shuffled.ts';
import { step, type Kind } from '../kind.ts';
import { inward, rowLoads, type InTurn, type OnBearing } from '../paper/bearing.ts';
import { directed, given, mm, phrase, rounded, type Phrase } from '../phrase.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly outer_N: number;
  readonly inner_N: number;
  readonly sideOuter_N: number;
  readonly sideInner_N: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
  readonly radius_mm: number;
  readonly listed: readonly number[];
}

interface Row {
  readonly id: string;
  readonly wheel: InTurn;
  readonly row: 'outboard' | 'inboard';
}

const ROWS: readonly Row[] = [
  { id: 'outer-outboard', wheel: 'outer', row: 'outboard' },
  { id: 'outer-inboard', wheel: 'outer', row: 'inboard' },
  { id: 'inner-outboard', wheel: 'inner', row: 'outboard' },
  { id: 'inner-inboard', wheel: 'inner', row: 'inboard' },
];

const onBearing = (item: Item, wheel: InTurn): OnBearing => ({
  load_N: wheel === 'outer' ? item.outer_N : item.inner_N,
  offset_mm: item.offset_mm,
  spread_mm: item.spread_mm,
  inward_N: inward(wheel, wheel === 'outer' ? item.sideOuter_N : item.sideInner_N),
  radius_mm: item.radius_mm,
});

const sized = (item: Item, { wheel, row }: Row, other: Partial<OnBearing> = {}): number =>
  Math.abs(rowLoads({ ...onBearing(item, wheel), ...other })[row]);

const sizes = (item: Item, of: (row: Row) => number): readonly number[] =>
  item.listed.map((place) => {
    const row = ROWS[place];
    return row ? of(row) : NaN;
  });

const loads = kept((item: Item) => sizes(item, (row) => sized(item, row)));
const sideTurned = (item: Item, row: Row): number =>
  sized(item, row, { inward_N: -(onBearing(item, row.wheel).inward_N ?? 0) });
const rowAt = (item: Item, index = -1): Row | undefined => ROWS[item.listed[index] ?? -1];

const largestRow = (item: Item): Row | undefined => rowAt(item, largestFirst(loads(item))[0]);

/** The wheel whose row has the largest load. */
const largestOn = (item: Item): OnBearing => onBearing(item, largestRow(item)?.wheel ?? 'outer');

/** The outer wheel without its side force: both wheels have the same hub. */
const straightAhead = (item: Item): OnBearing => ({ ...onBearing(item, 'outer'), inward_N: 0 });

/** The four rows of a front axle in a turn, from the one that is pressed most to the one that is pressed least. */
export const orderRowLoads: Kind<Item> = {
  id: 'order-row-loads',
  version: 1,
  title: 'Which row is pressed most?',
  lesson: 'cornering',
  level: 3,
  draw: (random) => {
    const outer_N = random.grid(4400, 6200, 50);
    const inner_N = random.grid(1800, 3200, 50);
    return {
      outer_N,
      inner_N,
      sideOuter_N: random.grid(800, 2600, 50),
      sideInner_N: random.grid(400, 1400, 50),
      offset_mm: random.pick([-1, 1]) * random.integer(3, 12),
      spread_mm: random.grid(56, 78, 2),
      radius_mm: random.integer(285, 340),
      listed: shuffled(random, ROWS.length),
    };
  },
  sound: (item) => wellSpaced(loads(item), 0.06),
  question: (item) =>
    phrase`In a turn the outer front wheel stands under ${given(item.outer_N, 'N')} and the road pushes it toward the car with ${given(item.sideOuter_N, 'N')}. The inner one stands under ${given(item.inner_N, 'N')} and is pushed away from the car with ${given(item.sideInner_N, 'N')}. Both bearings have their pressure centres ${mm(item.spread_mm)} apart and the load line ${directed(item.offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle; the loaded radius is ${mm(item.radius_mm)}. Put the four rows in order by the size of their radial load, at the top or at the bottom alike.`,
  ...bearingPictures<Item>({
    given: (item) => ({ ...straightAhead(item), radius_mm: item.radius_mm }),
    end: largestOn,
    toRoad: true,
    parts: {},
  }),
  wrong: (item, road) => {
    const row = largestRow(item);
    if (road.part !== 'largest' || !row) return undefined;
    const pictures = bearingPictures<Item>({
      given: largestOn,
      end: largestOn,
      toRoad: true,
      parts: { largest: { seen: 'row', row: row.row } },
    });
    // The sizes are asked for; the picture has the side on which the row is pressed as well.
    const sign = Math.sign(rowLoads(largestOn(item))[row.row]);
    return pictures.wrong?.(item, {
      ...road,
      value: sign * road.value,
      answer: sign * road.answer,
    });
  },
  parts: [
    ordering<Item>({
      id: 'order',
      name: 'order by radial load',
      label: 'Rows, the one with the largest load first',
      first: 'largest',
      last: 'smallest',
      options: (item) =>
        item.listed.flatMap((place) => {
          const row = ROWS[place];
          return row
            ? [{ id: row.id, words: phrase`the ${row.row} row of the ${row.wheel} wheel` }]
            : [];
        }),
      by: loads,
      hint: () =>
        phrase`For each wheel: half of the wheel load, give or take the moment over the spread. Toward the car, low down at the road, a push tips the top of the wheel outboard: which row does that press?`,
      slips: [
        {
          id: 'side-left-out',
          confuses: 'straight ahead',
          by: (item) => sizes(item, (row) => sized(item, row, { inward_N: 0 })),
          text: () =>
            phrase`That is the order straight ahead, from the wheel loads and the load line alone. In a turn the push of the road, a whole radius below the spin axis, counts for much more.`,
        },
        {
          id: 'push-turned-round',
          confuses: 'sense of the push',
          by: (item) => sizes(item, (row) => sideTurned(item, row)),
          text: () =>
            phrase`That has the sense of the push turned round. On the outer wheel the road pushes the tyre toward the car, low down: that takes load off the top of the outboard row and puts it on the inboard one.`,
        },
        {
          id: 'signed',
          confuses: 'sign',
          by: (item) => sizes(item, ({ wheel, row }) => rowLoads(onBearing(item, wheel))[row]),
          text: () =>
            phrase`That sorts by the sign as well: a row that is pressed at the bottom comes last, however hard. Balls do not mind on which side of the ring they are pressed; the size counts.`,
        },
        {
          id: 'line-left-out',
          confuses: 'load line',
          by: (item) => sizes(item, (row) => sized(item, row, { offset_mm: 0 })),
          text: () =>
            phrase`That lets the load line run through the middle of the rows. Its offset has a moment of its own, and here it decides between two of them.`,
        },
        {
          id: 'smallest-first',
          confuses: 'first and last',
          by: (item) => loads(item).map((load) => -load),
          text: () =>
            phrase`That is the very order with first and last exchanged: it begins with the smallest load. The largest is to stand first.`,
        },
      ],
      solution: (item, order) => {
        const rows = order.flatMap((at): Phrase[] => {
          const row = rowAt(item, at);
          return row
            ? [
                phrase`${letterOf(at)}, ${row.row} on the ${row.wheel} wheel: ${rounded(sized(item, row), 'N', 0)}. `,
              ]
            : [];
        });
        return phrase`${rows.flat()}So the order is ${order.map(letterOf).join(' ')}.`;
      },
    }),
    {
      id: 'largest',
      quantity: { name: 'size of the largest radial load', symbol: 'F', kind: 'force' },
      unit: 'N',
      decimals: 0,
      label: 'Size of the radial load that you put first',
      value: (item, earlier) => {
        const row = rowAt(item, orderOf(step(earlier, 0), ROWS.length)[0]);
        return row ? sized(item, row) : NaN;
      },
      possible: (value) => value > 0,
      hint: () =>
        phrase`Wheel load times load-line offset, and push times radius: two moments, each with its sense. Over the spread they add to half of the wheel load or go from it.`,
      slips: [
        {
          id: 'push-turned-round',
          confuses: 'sense of the push',
          value: (item) => of(item, (row) => sideTurned(item, row)),
          text: () =>
            phrase`That has the sense of the push turned round. Look whether the road pushes the foot of the tyre toward the car or away from it, and which row that presses.`,
        },
        {
          id: 'side-left-out',
          confuses: 'straight ahead',
          value: (item) => of(item, (row) => sized(item, row, { inward_N: 0 })),
          text: () =>
            phrase`That is what the row carries straight ahead, without the push of the road. In a turn its moment is added, or goes from it.`,
        },
        {
          id: 'line-turned-round',
          confuses: 'side of the load line',
          value: (item) => of(item, (row) => sized(item, row, { offset_mm: -item.offset_mm })),
          text: () =>
            phrase`That has the load line on the other side of the middle. The side of the load line says which row the wheel load presses more.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item) => of(item, (row) => sized(item, row, { spread_mm: item.spread_mm / 2 })),
          text: () =>
            phrase`That holds the moments over half of the spread. What one row gains the other loses, and together they hold over the whole of it.`,
        },
      ],
      solution: (item, earlier, value) => {
        const row = rowAt(item, orderOf(step(earlier, 0), ROWS.length)[0]);
        const wheel = row?.wheel ?? 'outer';
        const { load_N } = onBearing(item, wheel);
        return phrase`Half of the wheel load is ${given(load_N, 'N')} ÷ 2 = ${rounded(load_N / 2, 'N', 0)}. With the couple of load line and push on it or from it, the ${row?.row ?? ''} row of the ${wheel} wheel carries ${rounded(value, 'N', 0)}.`;
      },
    },
  ],
};

/** A size of the row that is pressed most. */
function of(item: Item, size: (row: Row) => number): number {
  const row = rowAt(item, largestFirst(loads(item))[0]);
  return row ? size(row) : NaN;
}
