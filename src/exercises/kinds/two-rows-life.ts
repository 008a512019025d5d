import type { RowKind } from '#core/bearing/factors.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { lifeAt, otherKind, PAIR_EXPONENT, pairLife, ROLLING } from '../paper/rating.ts';
import { bare, given, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import type { Bar } from '../pictures/picture.ts';

interface Item {
  readonly kind: RowKind;
  readonly rating_kN: number;
  readonly outboard_N: number;
  readonly inboard_N: number;
}

const rating = ({ rating_kN }: Item): number => si(rating_kN, 'kN');
const outboard = (item: Item): number => lifeAt(item.kind, rating(item) / si(item.outboard_N, 'N'));
const inboard = (item: Item): number => lifeAt(item.kind, rating(item) / si(item.inboard_N, 'N'));

const rowSlips = (own: 'outboard' | 'inboard') => {
  const load = (item: Item): number =>
    si(own === 'outboard' ? item.outboard_N : item.inboard_N, 'N');
  const otherLoad = (item: Item): number =>
    si(own === 'outboard' ? item.inboard_N : item.outboard_N, 'N');
  return [
    {
      id: 'other-exponent',
      confuses: 'exponent',
      value: (item: Item) => lifeAt(otherKind(item.kind), rating(item) / load(item)),
      text: (item: Item) =>
        phrase`That takes the exponent that belongs to ${ROLLING[otherKind(item.kind)]}. These rows have ${ROLLING[item.kind]}: three for balls, ten thirds for rollers.`,
    },
    {
      id: 'other-row',
      confuses: 'other row',
      value: (item: Item) => lifeAt(item.kind, rating(item) / otherLoad(item)),
      text: () =>
        phrase`That is the life of the other row. Both have the same rating, but each has a load of its own.`,
    },
    {
      id: 'both-loads',
      confuses: 'sum of the loads',
      value: (item: Item) => lifeAt(item.kind, rating(item) / (load(item) + otherLoad(item))),
      text: () =>
        phrase`That puts the sum of the loads on one row. Each row carries its own load only; what they do to each other’s chances comes at the end.`,
    },
    {
      id: 'in-step',
      confuses: 'ratio itself',
      value: (item: Item) => (1e6 * rating(item)) / load(item),
      text: () =>
        phrase`That is the ratio itself, rating over load, as if life went in step with the load. It has to be raised to its power first.`,
    },
  ];
};

const pair = (item: Item): number => pairLife(item.kind, outboard(item), inboard(item));

const lives = (item: Item, isTold: boolean): readonly Bar[] =>
  (
    [
      ['outboard', outboard(item)],
      ['inboard', inboard(item)],
    ] as const
  ).map(([row, value]) => ({
    says: isTold ? `${row} ${rounded(value, 'Mrev', 0).figure}` : row,
    value,
  }));

/** Two rows, each with a life of its own, and what both together are rated for. */
export const twoRowsLife: Kind<Item> = {
  id: 'two-rows-life',
  version: 1,
  title: 'Two rows, one hub',
  lesson: 'rating-life',
  level: 2,
  draw: (random) => {
    const rating_kN = random.integer(26, 62);
    const ratio = random.integer(45, 70);
    // The other row carries a tenth to two fifths more, or as much less.
    const percent = random.pick([-1, 1]) > 0 ? random.integer(110, 140) : random.integer(71, 91);
    return {
      kind: random.pick<RowKind>(['ball', 'roller']),
      rating_kN,
      outboard_N: 50 * Math.round((200 * rating_kN) / ratio),
      inboard_N: 50 * Math.round((2 * rating_kN * percent) / ratio),
    };
  },
  sound: () => true,
  pattern: ({ kind }) => kind,
  question: ({ kind, rating_kN, outboard_N, inboard_N }) =>
    phrase`A hub has two rows of ${ROLLING[kind]}, each with a load rating of ${given(rating_kN, 'kN')}. Their mean equivalent loads are ${given(outboard_N, 'N')} outboard and ${given(inboard_N, 'N')} inboard. For two rows together the exponent is ${PAIR_EXPONENT[kind]}.`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Mean equivalent loads',
    bars: [
      { says: `${given(item.outboard_N, 'N').figure} outboard`, value: item.outboard_N },
      { says: `${given(item.inboard_N, 'N').figure} inboard`, value: item.inboard_N },
    ],
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Rating lives',
    bars: [
      ...lives(item, true),
      { says: `both ${rounded(pair(item), 'Mrev', 0).figure}`, value: pair(item) },
    ],
  }),
  wrong: (_item, road) =>
    wrongBar(
      'Rating lives',
      road.part === 'both'
        ? [
            { says: 'outboard', value: step(road.earlier, 0) },
            { says: 'inboard', value: step(road.earlier, 1) },
            { says: 'both', value: road.answer },
          ]
        : [{ says: road.part, value: road.answer }],
      road,
    ),
  parts: [
    {
      id: 'outboard',
      quantity: OWN_QUANTITIES.rowLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life of the outboard row',
      value: outboard,
      possible: (value) => value > 0,
      hint: () => phrase`Rating over load, to the exponent of what rolls there.`,
      slips: rowSlips('outboard'),
      solution: ({ kind, rating_kN, outboard_N }, _earlier, value) =>
        phrase`${given(1000 * rating_kN, 'N')} ÷ ${given(outboard_N, 'N')} = ${bare((1000 * rating_kN) / outboard_N, 3)}, and to the exponent for ${ROLLING[kind]} that is ${rounded(value, 'Mrev', 0)}.`,
    },
    {
      id: 'inboard',
      quantity: OWN_QUANTITIES.otherRowLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life of the inboard row',
      value: inboard,
      possible: (value) => value > 0,
      hint: () => phrase`The same with the load of the other row. Which row will last longer?`,
      slips: rowSlips('inboard'),
      solution: ({ kind, rating_kN, inboard_N }, _earlier, value) =>
        phrase`${given(1000 * rating_kN, 'N')} ÷ ${given(inboard_N, 'N')} = ${bare((1000 * rating_kN) / inboard_N, 3)}, and to the exponent for ${ROLLING[kind]} that is ${rounded(value, 'Mrev', 0)}.`,
    },
    {
      id: 'both',
      quantity: OWN_QUANTITIES.pairLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life of both rows together',
      value: ({ kind }, earlier) => pairLife(kind, step(earlier, 0), step(earlier, 1)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`It has to be less than the weaker row. Each life to the negative exponent, add the two, and undo the exponent.`,
      slips: [
        {
          id: 'weaker-row',
          confuses: 'weaker row',
          value: (_item, earlier) => Math.min(step(earlier, 0), step(earlier, 1)),
          text: () =>
            phrase`That is the weaker row alone, as with a chain that breaks at its weakest link for certain. Here the other row may be the first to fail as well, so it is less.`,
        },
        {
          id: 'mean',
          confuses: 'mean',
          value: (_item, earlier) => (step(earlier, 0) + step(earlier, 1)) / 2,
          text: () =>
            phrase`That is the mean of the two lives. The hub is done when the first of its rows is done, so together they come to less than the weaker one.`,
        },
        {
          id: 'sum',
          confuses: 'sum',
          value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
          text: () =>
            phrase`That is the sum, as if the second row took over when the first has failed. Both run all the time, and the first failure ends it.`,
        },
        {
          id: 'by-1.5',
          confuses: 'Weibull slope',
          value: (_item, earlier) =>
            (step(earlier, 0) ** -1.5 + step(earlier, 1) ** -1.5) ** (-1 / 1.5),
          text: () =>
            phrase`That takes one and a half for the exponent, the Weibull slope that some makers use. The question gives another one, after the standard’s own theory.`,
        },
      ],
      solution: ({ kind }, earlier, value) =>
        phrase`Each life to the power −${PAIR_EXPONENT[kind]}, the two added, and the sum to the power one over −${PAIR_EXPONENT[kind]}: from ${rounded(step(earlier, 0), 'Mrev', 0)} and ${rounded(step(earlier, 1), 'Mrev', 0)} come ${rounded(value, 'Mrev', 0)}, less than either.`,
    },
  ],
};
