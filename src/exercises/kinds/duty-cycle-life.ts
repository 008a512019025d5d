import { meanLoad } from '#core/bearing/duty.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { lifeAt } from '../paper/rating.ts';
import { bare, given, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import type { Bar } from '../pictures/picture.ts';

interface Item {
  readonly rating_kN: number;
  readonly straight_N: number;
  readonly outside_N: number;
  readonly inside_N: number;
  readonly outside_percent: number;
  readonly inside_percent: number;
}

const rating = ({ rating_kN }: Item): number => si(rating_kN, 'kN');
const stepsOf = (item: Item) => {
  const [outside, inside] = [item.outside_percent / 100, item.inside_percent / 100];
  return [
    { share: 1 - outside - inside, load: si(item.straight_N, 'N') },
    { share: outside, load: si(item.outside_N, 'N') },
    { share: inside, load: si(item.inside_N, 'N') },
  ];
};
const rest = ({ outside_percent, inside_percent }: Item): number =>
  100 - outside_percent - inside_percent;

const NAMES = ['straight', 'outside', 'inside'] as const;

const loads = (item: Item): readonly Bar[] =>
  [item.straight_N, item.outside_N, item.inside_N].map((value) => ({
    says: given(value, 'N').figure,
    value,
  }));

/** Straight ahead and bends to both sides, mixed by equivalent load. */
export const dutyCycleLife: Kind<Item> = {
  id: 'duty-cycle-life',
  version: 1,
  title: 'Straight ahead and round bends',
  lesson: 'rating-life',
  level: 2,
  draw: (random) => {
    const loads = {
      straight_N: random.grid(1800, 3200, 100),
      outside_N: random.grid(8000, 14000, 500),
      inside_N: random.grid(4000, 6500, 100),
      outside_percent: random.integer(3, 12),
      inside_percent: random.integer(3, 12),
    };
    return { rating_kN: random.integer(26, 44), ...loads };
  },
  sound: (item) => {
    const ratio = rating(item) / meanLoad(stepsOf(item), 3);
    return ratio > 4.2 && ratio < 7.5;
  },
  question: (item) =>
    phrase`The duty cycle of a ball row, with equivalent loads. In bends with this wheel outside, ${given(item.outside_percent, 'percent')} of the revolutions under ${given(item.outside_N, 'N')}. In bends with it inside, ${given(item.inside_percent, 'percent')} under ${given(item.inside_N, 'N')}. The rest is straight ahead, under ${given(item.straight_N, 'N')}. The load rating of the row is ${given(item.rating_kN, 'kN')}.`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Equivalent loads',
    bars: loads(item),
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Equivalent loads, as wide as their shares, and their mean',
    bars: [
      ...stepsOf(item).map(({ share, load }, i) => ({
        says: NAMES[i] ?? '',
        value: load,
        width: 4 * share + 0.4,
      })),
      { says: 'mean', value: meanLoad(stepsOf(item), 3) },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'mean'
      ? wrongBar(
          'Equivalent loads and their mean',
          [
            ...stepsOf(item).map(({ load }, i) => ({ says: NAMES[i] ?? '', value: load })),
            { says: 'mean', value: road.answer },
          ],
          road,
        )
      : undefined,
  parts: [
    {
      id: 'mean',
      quantity: OWN_QUANTITIES.meanLoad,
      unit: 'N',
      decimals: 0,
      label: 'Mean equivalent load of the row',
      value: (item) => meanLoad(stepsOf(item), 3),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Which share is left to go straight ahead? Then each load to the third power, times its share; add them; and the third root last.`,
      slips: [
        {
          id: 'plain-mean',
          confuses: 'plain mean',
          value: (item) => meanLoad(stepsOf(item), 1),
          text: () =>
            phrase`That is the plain mean of the loads by their shares. It would do if all revolutions counted in step with the load; high loads count far more, so take third powers.`,
        },
        {
          id: 'squares',
          confuses: 'squares',
          value: (item) => meanLoad(stepsOf(item), 2),
          text: () =>
            phrase`That is the root of the mean of the squares, as for heat in a wire. Fatigue of balls goes with the third power: cubes, and the third root.`,
        },
        {
          id: 'no-shares',
          confuses: 'shares',
          value: (item) =>
            meanLoad(
              stepsOf(item).map(({ load }) => ({ share: 1 / 3, load })),
              3,
            ),
          text: () =>
            phrase`That gives all three kinds of driving equal shares. The car goes straight ahead for most of the distance: weigh each cube with its own share.`,
        },
        {
          id: 'bends-left-out',
          confuses: 'straight ahead',
          value: (item) => si(item.straight_N, 'N'),
          text: () =>
            phrase`That is the load straight ahead alone, since most of the distance is straight. The short distance in the bends takes most of the life, so it has to be in the mean.`,
        },
        {
          id: 'highest',
          confuses: 'highest load',
          value: (item) => si(item.outside_N, 'N'),
          text: () =>
            phrase`That is the highest load, as if the car drove round one bend for ever. It would be the cautious road; but it lasts for a small share of the distance only.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`For straight ahead there are 100 − ${bare(item.outside_percent, 0)} − ${bare(item.inside_percent, 0)} = ${bare(rest(item), 0)} per cent left. Each load to the third power, times its share, added up, and the third root of it: ${rounded(value, 'N', 0)}. Nearer to the high loads than the plain mean of ${rounded(meanLoad(stepsOf(item), 1), 'N', 0)} is.`,
    },
    {
      id: 'life',
      quantity: OWN_QUANTITIES.rowLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life of the row',
      value: (item, earlier) => lifeAt('ball', rating(item) / step(earlier, 0)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Rating over mean load, both in newtons, to the exponent that belongs to balls.`,
      slips: [
        {
          id: 'rollers',
          confuses: 'rollers',
          value: (item, earlier) => lifeAt('roller', rating(item) / step(earlier, 0)),
          text: () =>
            phrase`That takes the exponent of rollers, ten thirds. Rollers touch along a line and answer a little more steeply. This row has balls, so the exponent is three.`,
        },
        {
          id: 'straight-load',
          confuses: 'load straight ahead',
          value: (item) => lifeAt('ball', rating(item) / si(item.straight_N, 'N')),
          text: () =>
            phrase`That puts in the load straight ahead, and leaves out the bends. The mean load of the line above stands for all of the driving.`,
        },
        {
          id: 'outside-load',
          confuses: 'load in the outside bends',
          value: (item) => lifeAt('ball', rating(item) / si(item.outside_N, 'N')),
          text: () =>
            phrase`That puts in the load in the outside bends for all of the distance. It would be so on a skid pan, driven in a circle; here take the mean load of the line above.`,
        },
        {
          id: 'squared',
          confuses: 'square',
          value: (item, earlier) => 1e6 * (rating(item) / step(earlier, 0)) ** 2,
          text: () =>
            phrase`That takes the square of rating over load. For balls the exponent is three, the same with which the loads were mixed.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Rating over mean load, ${given(1000 * item.rating_kN, 'N')} over ${rounded(step(earlier, 0), 'N', 0)}, to the third power: ${rounded(value, 'Mrev', 0)}.`,
    },
  ],
};
