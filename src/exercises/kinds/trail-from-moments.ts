import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind, type Slip } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { computed, given, phrase, rounded, si } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  readonly gentle_N: number;
  readonly gentle_Nm: number;
  readonly limit_N: number;
  readonly limit_Nm: number;
}

const gentle = ({ gentle_N }: Item): number => si(gentle_N, 'N');
const gentleMoment = ({ gentle_Nm }: Item): number => si(gentle_Nm, 'Nm');
const limit = ({ limit_N }: Item): number => si(limit_N, 'N');
const limitMoment = ({ limit_Nm }: Item): number => si(limit_Nm, 'Nm');
const positive = (value: number): boolean => value > 0;
/** A moment on the printed grid: N·m with one decimal, from newtons and millimetres. */
const moment_Nm = (force_N: number, lever_mm: number): number =>
  Math.round((force_N * lever_mm) / 100) / 10;

const atLimit = (item: Item): number => limitMoment(item) / limit(item);
const gently = (item: Item): number => gentleMoment(item) / gentle(item);

/** Moment of one bend over the force of the other. */
const mixed = (moment: (item: Item) => number, force: (item: Item) => number): Slip<Item> => ({
  id: 'mixed-pair',
  confuses: 'two bends',
  value: (item) => moment(item) / force(item),
  text: () =>
    phrase`That divides the moment of one bend by the force of the other. The two bends are two states of the car; force and moment of one lever have to come from the same.`,
});

/** Of the two bends, as if one lever had been read twice. */
const MEAN: Slip<Item> = {
  id: 'mean',
  confuses: 'both bends together',
  value: (item) => (gentleMoment(item) + limitMoment(item)) / (gentle(item) + limit(item)),
  text: () =>
    phrase`That takes both bends together. It would smooth two readings of one lever. Here the lever has changed in between, and that is what is asked for.`,
};

/** As if force and moment were of both wheels. */
const twoTyres = (lever: (item: Item) => number): Slip<Item> => ({
  id: 'two-tyres',
  confuses: 'two tyres',
  value: (item) => lever(item) / 2,
  text: () =>
    phrase`That shares the moment between two tyres. Force and moment here are both of one wheel, so one divided by the other is its lever.`,
});

/** Backwards: from what the wheel does gently and at the limit to the two trails. */
export const trailFromMoments: Kind<Item> = {
  id: 'trail-from-moments',
  version: 1,
  title: 'Why the wheel goes light',
  lesson: 'side-weight-parking',
  level: 3,
  draw: (random) => {
    // Half millimetres times even hundreds of newtons stay on the moments' grid.
    const trail_mm = 0.5 * random.integer(12, 68);
    const tyre_mm = random.integer(10, 30);
    const gentle_N = random.grid(600, 1600, 200);
    const limit_N = random.grid(2600, 5000, 200);
    return {
      gentle_N,
      gentle_Nm: moment_Nm(gentle_N, trail_mm + tyre_mm),
      limit_N,
      limit_Nm: moment_Nm(limit_N, trail_mm),
    };
  },
  sound: () => true,
  question: ({ gentle_N, gentle_Nm, limit_N, limit_Nm }) =>
    phrase`A test car with an upright steering axis measures its left front wheel in a bend. Driven gently, the road pushes the tyre to the side with ${given(gentle_N, 'N')}, and that turns the wheel back with ${given(gentle_Nm, 'Nm')} about the axis. At the limit, where the whole print slides and the tyre has no trail of its own left, ${given(limit_N, 'N')} turn it back with ${given(limit_Nm, 'Nm')}.`,
  solved: (item) => ({
    ...{ scene: 'corner', view: 'side' },
    corner: cornerAtRoad({ trail: atLimit(item) }),
    forces: [
      {
        at: 'road',
        towards: [0, 1, 0],
        says: given(item.gentle_N, 'N').figure,
        behind: gently(item) - atLimit(item),
      },
    ],
    measures: [
      { of: 'trail', says: `trail ${rounded(atLimit(item), 'mm', 1).figure}` },
      { of: 'sideLever', says: `lever ${rounded(gently(item), 'mm', 1).figure}` },
    ],
  }),
  wrong: (_item, road) =>
    road.part === 'trail'
      ? seenBeside({ of: 'trail', says: 'trail', view: 'side' }, road, (value) =>
          cornerAtRoad({ trail: value }),
        )
      : undefined,
  parts: [
    {
      id: 'trail',
      quantity: QUANTITIES.trail,
      unit: 'mm',
      decimals: 1,
      label: 'Mechanical trail',
      value: atLimit,
      possible: positive,
      hint: () =>
        phrase`At the limit one of the two trails is gone. Which one is left, and which force and moment belong to it?`,
      slips: [
        {
          id: 'gentle-pair',
          confuses: 'gentle bend',
          value: gently,
          text: () =>
            phrase`That takes force and moment of the gentle bend. Their lever has both trails in it. At the limit only the mechanical trail is left: take that pair.`,
        },
        mixed(limitMoment, gentle),
        MEAN,
        twoTyres(atLimit),
      ],
      solution: ({ limit_N, limit_Nm }, _earlier, value) =>
        phrase`At the limit only the mechanical trail is left: ${given(limit_Nm, 'Nm')} ÷ ${given(limit_N, 'N')} = ${rounded(value, 'm', 4)}, so ${computed(value, 'length')}, and the axis is ahead: the wheel is turned back.`,
    },
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 1,
      label: 'Lever of the side force in the gentle bend',
      value: gently,
      possible: positive,
      hint: () => phrase`The same division with the other pair: moment over force.`,
      slips: [
        {
          id: 'limit-pair',
          confuses: 'limit',
          value: atLimit,
          text: () =>
            phrase`That takes the pair at the limit once more. It gave the mechanical trail. In the gentle bend the lever is longer, so its own pair is needed.`,
        },
        mixed(gentleMoment, limit),
        MEAN,
        twoTyres(gently),
      ],
      solution: ({ gentle_N, gentle_Nm }, _earlier, value) =>
        phrase`In the gentle bend: ${given(gentle_Nm, 'Nm')} ÷ ${given(gentle_N, 'N')} = ${rounded(value, 'm', 4)}, so ${computed(value, 'length')}.`,
    },
    {
      id: 'tyre',
      quantity: QUANTITIES.pneumaticTrail,
      unit: 'mm',
      decimals: 1,
      label: 'Pneumatic trail in the gentle bend',
      value: (_item, earlier) => step(earlier, 1) - step(earlier, 0),
      sum: 'rounded',
      possible: positive,
      hint: () =>
        phrase`The lever in the gentle bend is made of two trails, one behind the other. One of them you know.`,
      slips: [
        {
          id: 'added',
          confuses: 'adding',
          value: (_item, earlier) => step(earlier, 1) + step(earlier, 0),
          text: () =>
            phrase`That comes from adding. It would be right if the tyre’s own trail were known and the whole asked for. The whole has the mechanical trail in it already: take it away.`,
        },
        {
          id: 'whole-lever',
          confuses: 'whole lever',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the whole lever again. It would be the tyre’s own if the axis met the road at the contact centre. Here a part of it is the mechanical trail.`,
        },
        {
          id: 'axis-share',
          confuses: 'mechanical trail',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the mechanical trail again, the share that stays at the limit. The tyre’s own share is the other one, which dies away.`,
        },
        {
          id: 'halved',
          confuses: 'half of it',
          value: (_item, earlier) => (step(earlier, 1) - step(earlier, 0)) / 2,
          text: () =>
            phrase`That is half of it. A mean of two levers would be halved; what is asked for is the whole of the difference between them.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`Whole lever less mechanical trail: ${rounded(step(earlier, 1), 'mm', 1)} − ${rounded(step(earlier, 0), 'mm', 1)} = ${rounded(value, 'mm', 1)}. That much of the lever dies away on the way to the limit, and the steering wheel goes light.`,
    },
  ],
};
