import type { RowKind } from '#core/bearing/factors.ts';
import { lifeExponent, ratingLife } from '#core/bearing/life.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { EXPONENT, otherKind, ROLLING } from '../paper/rating.ts';
import { bare, given, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly kind: RowKind;
  readonly before_N: number;
  readonly after_N: number;
  readonly way_km: number;
  readonly world: World;
}

type World = 'van' | 'sheet' | 'wheels';

const WORLDS: Readonly<Record<World, string>> = {
  van: 'A courier compares two ways of loading a van.',
  sheet: 'A class compares two cars that have the same wheel bearing.',
  wheels: 'An enthusiast compares two sets of wheels on one car.',
};

const before = ({ before_N }: Item): number => si(before_N, 'N');
const after = ({ after_N }: Item): number => si(after_N, 'N');
const way = ({ way_km }: Item): number => si(way_km, 'km');
const left = (kind: RowKind, factor: number): number => ratingLife(kind, 1, factor);
const heavier = ({ before_N, after_N }: Item): boolean => after_N > before_N;

/** A load that changes, and the share of the life that is left or gained. */
export const lifeLeft: Kind<Item> = {
  id: 'life-left',
  version: 1,
  title: 'What is left of the life',
  lesson: 'rating-life',
  level: 1,
  draw: (random) => {
    const before_N = random.grid(2500, 5000, 50);
    // A fifth to two thirds more, or a fifth to two fifths less.
    const percent = random.pick([-1, 1]) > 0 ? random.integer(120, 168) : random.integer(58, 81);
    return {
      kind: random.pick<RowKind>(['ball', 'roller']),
      before_N,
      after_N: 10 * Math.round((before_N * percent) / 1000),
      way_km: random.grid(60_000, 400_000, 5000),
      world: random.pick<World>(['van', 'sheet', 'wheels']),
    };
  },
  sound: () => true,
  pattern: (item) => `${item.kind} ${heavier(item) ? 'heavier' : 'lighter'}`,
  question: ({ kind, before_N, after_N, way_km, world }) =>
    phrase`${WORLDS[world]} A row with ${ROLLING[kind]} had a mean equivalent load of ${given(before_N, 'N')} in the one case and has ${given(after_N, 'N')} in the other. In the first case the row is rated for ${given(way_km, 'km')}.`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Mean equivalent loads',
    bars: [
      { says: given(item.before_N, 'N').figure, value: item.before_N },
      { says: given(item.after_N, 'N').figure, value: item.after_N },
    ],
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Rating lives of the first and the other case',
    bars: [
      { says: 'first 100 %', value: 1 },
      {
        says: `other ${rounded(left(item.kind, after(item) / before(item)), 'percent', 1).figure}`,
        value: left(item.kind, after(item) / before(item)),
      },
    ],
  }),
  wrong: (_item, road) =>
    road.part === 'left'
      ? wrongBar(
          'Rating lives of the first and the other case',
          [
            { says: 'first', value: 1 },
            { says: 'other', value: road.answer },
          ],
          road,
        )
      : undefined,
  parts: [
    {
      id: 'factor',
      quantity: OWN_QUANTITIES.loadFactor,
      unit: 'ratio',
      decimals: 3,
      label: 'New load over old load',
      value: (item) => after(item) / before(item),
      possible: (value) => value > 0,
      hint: () =>
        phrase`A number above one says that the load has grown. Has it, and by which part?`,
      slips: [
        {
          id: 'upside-down',
          confuses: 'upside down',
          value: (item) => before(item) / after(item),
          text: () =>
            phrase`That is upside down, old over new. It comes in handy for the life in the next line; here the question is how the load has changed.`,
        },
        {
          id: 'difference',
          confuses: 'change alone',
          value: (item) => (after(item) - before(item)) / before(item),
          text: () =>
            phrase`That is the change alone as a share of the old load. The factor has the old load in it as well: one more.`,
        },
        {
          id: 'of-the-sum',
          confuses: 'sum',
          value: (item) => after(item) / (after(item) + before(item)),
          text: () =>
            phrase`That is the share in the sum of both loads, as if both were carried at once. One takes the place of the other: divide the new by the old.`,
        },
        {
          id: 'of-the-mean',
          confuses: 'mean',
          value: (item) => (after(item) - before(item)) / (after(item) + before(item)),
          text: () =>
            phrase`That compares with the mean of the two loads. The old load is the yardstick here: what is it multiplied by to give the new one?`,
        },
      ],
      solution: ({ before_N, after_N }, _earlier, value) =>
        phrase`${given(after_N, 'N')} ÷ ${given(before_N, 'N')} = ${bare(value, 3)}, ${value > 1 ? 'more' : 'less'} than before.`,
    },
    {
      id: 'left',
      quantity: OWN_QUANTITIES.lifeLeft,
      unit: 'percent',
      decimals: 1,
      label: 'Rating life, of what it was',
      value: ({ kind }, earlier) => left(kind, step(earlier, 0)),
      possible: (value) => value > 0,
      hint: ({ kind }) =>
        phrase`The rating stays and drops out. One over the factor, raised to the exponent for ${ROLLING[kind]}: more or less than the whole?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'the wrong way',
          value: ({ kind }, earlier) => 1 / left(kind, step(earlier, 0)),
          text: () =>
            phrase`That goes the wrong way: a heavier load would make a longer life. The load stands below the line, so one over the factor is raised to the power.`,
        },
        {
          id: 'in-step',
          confuses: 'in step',
          value: (_item, earlier) => 1 / step(earlier, 0),
          text: () =>
            phrase`That lets life go in step with the load. It would be so with an exponent of one; fatigue is far steeper.`,
        },
        {
          id: 'other-exponent',
          confuses: 'exponent',
          value: ({ kind }, earlier) => left(otherKind(kind), step(earlier, 0)),
          text: ({ kind }) =>
            phrase`That takes the exponent ${EXPONENT[otherKind(kind)]}, as for ${ROLLING[otherKind(kind)]}. With ${ROLLING[kind]} it is ${EXPONENT[kind]}: look at what rolls before you take a power.`,
        },
        {
          id: 'squared',
          confuses: 'square',
          value: (_item, earlier) => 1 / step(earlier, 0) ** 2,
          text: () =>
            phrase`That takes the square of the factor. The exponent is three for balls and ten thirds for rollers, so the life answers more strongly.`,
        },
        {
          id: 'times-exponent',
          confuses: 'times the exponent',
          value: ({ kind }, earlier) => 1 - lifeExponent(kind) * (step(earlier, 0) - 1),
          text: () =>
            phrase`That takes the change times the exponent off the whole. For a change of one or two per cent it nearly fits; for this one raise the factor to the power.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`One over ${bare(step(earlier, 0), 3)}, raised to the power ${EXPONENT[item.kind]}, is ${rounded(value, 'percent', 1)}. ${heavier(item) ? 'The load has grown, and the life has lost more than in step with it.' : 'The load has become less, and the life has gained more than in step with it.'}`,
    },
    {
      id: 'way',
      quantity: OWN_QUANTITIES.lifeWay,
      unit: 'km',
      decimals: 0,
      label: 'What the row is rated for in the other case',
      value: (item, earlier) => way(item) * step(earlier, 1),
      possible: (value) => value > 0,
      hint: () => phrase`So many per cent of the distance before. Will it be longer or shorter?`,
      slips: [
        {
          id: 'unchanged',
          confuses: 'first case',
          value: way,
          text: () =>
            phrase`That is the distance of the first case. The row and its rating are the same, but the load is another one, and the life goes with it.`,
        },
        {
          id: 'divided',
          confuses: 'divided',
          value: (item, earlier) => way(item) / step(earlier, 1),
          text: () =>
            phrase`That is divided by the share instead of multiplied: it goes the wrong way. The share says what the distance before is multiplied by.`,
        },
        {
          id: 'in-step',
          confuses: 'load factor',
          value: (item, earlier) => way(item) / step(earlier, 0),
          text: () =>
            phrase`That divides the distance by the load factor, in step with the load. The share of the life that you have worked out has the power in it already.`,
        },
        {
          id: 'added',
          confuses: 'on top',
          value: (item, earlier) => way(item) * (1 + step(earlier, 1)),
          text: () =>
            phrase`That puts the share on top of the distance before. It is a share of that distance and takes its place; nothing is added.`,
        },
      ],
      solution: ({ way_km }, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'percent', 1)} of ${given(way_km, 'km')} makes ${rounded(value, 'km', 0)}. Say it as “about”, and say the ratio first: of the two it is the number to trust.`,
    },
  ],
};
