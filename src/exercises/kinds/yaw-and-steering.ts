import { yawMoment, type Sides } from '#core/axle.ts';
import { otherSide, type Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept, keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { steeringMomentOfDifference } from '../paper/axle.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { axlePictures, brakeSense, senseOf } from '../pictures/axle-pictures.ts';
import type { AxleMeasure } from '../pictures/picture.ts';

interface Item {
  /** The side on dry road. */
  readonly side: Side;
  readonly dry_N: number;
  readonly ice_N: number;
  readonly track_mm: number;
  readonly scrub_mm: number;
}

const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const halfTrack = ({ track_mm }: Item): number => si(track_mm, 'mm') / 2;
const brakes = ({ side, dry_N, ice_N }: Item): Sides<number> =>
  side === 'left' ? { left: dry_N, right: ice_N } : { left: ice_N, right: dry_N };
const difference = (item: Item): number => brakes(item).left - brakes(item).right;
const yaw = kept((item: Item): number => yawMoment(brakes(item), 2 * halfTrack(item)));
const steering = keptStep((item: Item, earlier: Earlier): number =>
  steeringMomentOfDifference(step(earlier, 0) / halfTrack(item), scrub(item)),
);

/** What was taken for the lever of the yaw moment. */
const TAKEN: Readonly<Record<string, AxleMeasure['of']>> = {
  'whole-track': 'track',
  'scrub-radius': 'scrub',
};

/** One side on ice: which way the car is turned, and which way the steering. */
export const yawAndSteering: Kind<Item> = {
  id: 'yaw-and-steering',
  version: 1,
  title: 'Car and steering on split friction',
  lesson: 'left-against-right',
  level: 2,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    dry_N: random.grid(2500, 5000, 100),
    ice_N: random.grid(300, 900, 50),
    track_mm: random.grid(1400, 1650, 10),
    scrub_mm: random.pick([-1, 1]) * random.integer(6, 30),
  }),
  sound: () => true,
  pattern: ({ side }) => `${side} side dry`,
  question: (item) =>
    phrase`A car brakes with its ${item.side} wheels on dry road and its ${otherSide(item.side)} wheels on ice. The ${item.side} front tyre finds ${given(item.dry_N, 'N')}, the ${otherSide(item.side)} one ${given(item.ice_N, 'N')}; the brakes sit on the carriers. Between the contact centres there are ${mm(item.track_mm)}. The steering axes stand upright, and the scrub radius is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}.`,
  ...axlePictures<Item>({
    brakes: (item) => ({
      left_N: brakes(item).left,
      right_N: brakes(item).right,
      scrub_mm: item.scrub_mm,
    }),
    parts: { yaw: 'car', steering: 'both' },
    turns: (item) => ({
      left: brakeSense('left', item.scrub_mm),
      right: brakeSense('right', item.scrub_mm),
      both: senseOf(steeringMomentOfDifference(difference(item), scrub(item))),
      car: senseOf(yaw(item)),
    }),
    other: (_item, { part, slip }, base) => {
      const taken = part === 'yaw' ? TAKEN[slip] : undefined;
      return (
        taken && {
          ...base,
          measures: [
            { of: 'halfTrack', says: 'lever' },
            { of: taken, says: 'yours', wrong: true },
          ],
        }
      );
    },
  }),
  drawnTrue: ['steering'],
  parts: [
    {
      id: 'yaw',
      quantity: QUANTITIES.yawMoment,
      unit: 'Nm',
      decimals: 0,
      label: 'Yaw moment of the front wheels',
      value: yaw,
      hint: () =>
        phrase`What both tyres have in common only slows the car. The rest turns it about its own middle: how far from there does each tyre pull, and which side is held back?`,
      slips: [
        {
          id: 'whole-track',
          confuses: 'whole track',
          value: (item) => 2 * yaw(item),
          text: () =>
            phrase`That takes the whole track for the lever, as if the car turned about one of its wheels. It is turned about its middle, and each tyre stands half a track from there.`,
        },
        {
          id: 'scrub-radius',
          confuses: 'scrub radius',
          value: (item) => difference(item) * scrub(item),
          text: () =>
            phrase`That takes the scrub radius for the lever. It belongs to the steering, and its turn comes next. The car as a whole turns about its middle, half a track from each tyre.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the yaw moment',
          value: (item) => -yaw(item),
          text: () =>
            phrase`The size fits, but the direction of the yaw moment is turned round. The side with more braking force is held back, and the other side runs on round it: the nose goes toward the side that grips.`,
        },
        {
          id: 'added-up',
          confuses: 'sum of the braking forces',
          value: (item) => Math.sign(yaw(item)) * (item.dry_N + item.ice_N) * halfTrack(item),
          text: () =>
            phrase`That takes the sum of the braking forces. It slows the car; what turns it is by how much one side has more than the other.`,
        },
        {
          id: 'dry-alone',
          confuses: 'tyre on the ice',
          value: (item) => Math.sign(yaw(item)) * item.dry_N * halfTrack(item),
          text: () =>
            phrase`That leaves out the tyre on the ice. It finds little, but not nothing, and what it does find pulls the car round the other way.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Left less right: ${given(brakes(item).left, 'N')} − ${given(brakes(item).right, 'N')} = ${rounded(difference(item), 'N', 0)}. Times half a track: ${term(rounded(difference(item), 'N', 0))} · ${rounded(halfTrack(item), 'm', 3)} = ${rounded(value, 'Nm', 1)}. The car is turned ${sign(value, QUANTITIES.yawMoment)}, toward the side that grips.`,
    },
    {
      id: 'steering',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment of both wheels together',
      value: steering,
      hint: () =>
        phrase`The same difference once more, at another lever: the yaw moment over half a track, times the scrub radius. On which side of the gripping tyre’s middle is its axis, and which way does that swing it?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of the steering moment',
          value: (item, earlier) => -steering(item, earlier),
          text: ({ scrub_mm }) =>
            phrase`The size fits, but the direction of the steering moment is turned round. It would be so with the axis on the other side. Here it meets the road ${sign(scrub_mm, QUANTITIES.scrubRadius)} of the contact centre: pull the gripping tyre rearward there.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item, earlier) => 2 * steering(item, earlier),
          text: () =>
            phrase`That counts the difference for both wheels, as if each had it. It is there once: one wheel has its force, the other takes its own away from it.`,
        },
        {
          id: 'added-up',
          confuses: 'sum of the braking forces',
          value: (item) =>
            steeringMomentOfDifference(
              Math.sign(difference(item)) * (item.dry_N + item.ice_N),
              scrub(item),
            ),
          text: () =>
            phrase`That takes the sum of the braking forces. On the rack the two wheels pull against each other, and only their difference is left to turn them.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * steering(item, earlier),
          text: () =>
            phrase`That has millimetres in it: newtons times millimetres are newton millimetres. Turn the scrub radius into metres before you multiply, and newton metres come out.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The same difference at the scrub radius: ${term(rounded(difference(item), 'N', 0))} · ${term(given(item.scrub_mm / 1000, 'm'))} = ${rounded(value, 'Nm', 1)}. The wheels are turned ${sign(value, QUANTITIES.steeringMoment)}, ${value > 0 === step(earlier, 0) > 0 ? 'the way the car turns already: the two add' : 'against the way the car turns'}.`,
    },
  ],
};
