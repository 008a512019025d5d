import { QUANTITIES } from '#core/quantities.ts';
import { choosing, chosen, type Choice } from '../forms/choosing.ts';
import { kept } from '../forms/kept.ts';
import { shuffled } from '../forms/shuffled.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { steeringMomentOf } from '../paper/axle.ts';
import { directed, given, phrase, rounded, si, sign, term } from '../phrase.ts';
import { axlePictures, brakeSense, senseOf } from '../pictures/axle-pictures.ts';
import type { AxleTurns } from '../pictures/picture.ts';

interface Item {
  readonly left_N: number;
  readonly right_N: number;
  readonly scrub_mm: number;
  readonly listed: readonly number[];
}

const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const both = kept((item: Item): number =>
  steeringMomentOf({ left: item.left_N, right: item.right_N }, scrub(item)),
);
const stronger = ({ left_N, right_N }: Item): 'left' | 'right' =>
  left_N > right_N ? 'left' : 'right';
/** Which way a braked tyre swings about an axis that meets the road on that side of it. */
const swings = ({ scrub_mm }: Item): string => (scrub_mm > 0 ? 'toe-out' : 'toe-in');

const CHOICES: readonly Choice<Item>[] = [
  {
    id: 'left',
    words: () => ['both wheels are turned to the left'],
    confuses: 'side of the axis',
    text: (item) =>
      phrase`To the left the wheels would go if the side of the axis were the other one, or the other brake the stronger one. Here the ${stronger(item)} brake is stronger, and its wheel is swung ${swings(item)}.`,
  },
  {
    id: 'right',
    words: () => ['both wheels are turned to the right'],
    confuses: 'side of the axis',
    text: (item) =>
      phrase`To the right the wheels would go if the side of the axis were the other one, or the other brake the stronger one. Here the ${stronger(item)} brake is stronger, and its wheel is swung ${swings(item)}.`,
  },
  {
    id: 'toe-out',
    words: () => ['each wheel is turned outboard, and the steering stays where it is'],
    confuses: 'equal brakes',
    text: (item) =>
      phrase`So it would be with equal brakes and an axis inboard of the tyre: the wheels would pull at the rack from both sides and settle it. Here the ${stronger(item)} brake is stronger and wins over the other one.`,
  },
  {
    id: 'toe-in',
    words: () => ['each wheel is turned inboard, and the steering stays where it is'],
    confuses: 'equal brakes',
    text: (item) =>
      phrase`So it would be with equal brakes and an axis outboard of the tyre: the wheels would push at the rack from both sides and settle it. Here the ${stronger(item)} brake is stronger and wins over the other one.`,
  },
  {
    id: 'nothing',
    words: () => ['no wheel is turned at all, for the axes stand upright'],
    confuses: 'lean of the axis',
    text: () =>
      phrase`That takes the lean of the axis for its lever. An upright axis beside the tyre has a lever all the same: the scrub radius. Without one of these a braking force at the road would turn nothing.`,
  },
];

const right = (item: Item): 'left' | 'right' => (both(item) > 0 ? 'left' : 'right');

/** The moment in the sense that the learner has said; the true one where nothing was said to turn. */
function moment(item: Item, earlier: Earlier): number {
  const size = Math.abs(both(item));
  switch (chosen(CHOICES, item.listed, step(earlier, 0))) {
    case 'left':
      return size;
    case 'right':
      return -size;
    default:
      return NaN;
  }
}

const turns = (item: Item): AxleTurns => ({
  left: brakeSense('left', item.scrub_mm),
  right: brakeSense('right', item.scrub_mm),
  both: senseOf(both(item)),
});

/** What somebody has said who took another road. */
const WRONG_SENSE: Readonly<Record<string, AxleTurns>> = {
  left: { both: 1 },
  right: { both: -1 },
  'toe-out': { left: 1, right: -1 },
  'toe-in': { left: -1, right: 1 },
};

/** Two brakes that differ: first which way the wheels go, then how hard. */
export const senseOfTwoBrakes: Kind<Item> = {
  id: 'sense-of-two-brakes',
  version: 1,
  title: 'Which way does it pull?',
  lesson: 'left-against-right',
  level: 2,
  draw: (random) => ({
    left_N: random.grid(1200, 4500, 50),
    right_N: random.grid(1200, 4500, 50),
    scrub_mm: random.pick([-1, 1]) * random.integer(6, 44),
    listed: shuffled(random, CHOICES.length),
  }),
  sound: ({ left_N, right_N }) => Math.abs(left_N - right_N) >= 400,
  pattern: (item) => `${stronger(item)} ${item.scrub_mm > 0 ? 'inboard' : 'outboard'}`,
  question: (item) =>
    phrase`A car brakes on a road that is wet on one side. The road holds the left front tyre back with ${given(item.left_N, 'N')} and the right one with ${given(item.right_N, 'N')}; both calipers sit on the carriers. The steering axes stand upright, and the scrub radius on both sides is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. The driver lets go for a moment: what do the two brakes do to the wheels, and how large is their moment together?`,
  ...axlePictures<Item>({
    brakes: (item) => item,
    parts: { moment: 'both' },
    turns,
    other: (item, { part, slip }, base) => {
      const wrong = part === 'sense' ? WRONG_SENSE[slip] : undefined;
      return wrong && { ...base, turns: { both: senseOf(both(item)) }, wrong };
    },
  }),
  parts: [
    choosing<Item>({
      id: 'sense',
      name: 'sense of turning',
      label: 'What happens, seen from above',
      choices: CHOICES,
      listed: ({ listed }) => listed,
      right,
      hint: () =>
        phrase`Take the stronger brake alone. Its tyre is pulled rearward beside the axis: on which side of it, and where does that swing the front of the wheel? The rack takes the other wheel along.`,
      solution: (item) =>
        phrase`The axes meet the road ${sign(item.scrub_mm, QUANTITIES.scrubRadius)} of the tyres, so each brake swings its wheel ${swings(item)}. The ${stronger(item)} brake is stronger and takes the other wheel along: both go to the ${right(item)}.`,
    }),
    {
      id: 'moment',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment of both wheels together',
      value: moment,
      sum: 'rounded',
      hint: () =>
        phrase`Only the difference of the forces is left. It has the scrub radius for its lever.`,
      slips: [
        {
          id: 'added-up',
          confuses: 'two brakes added up',
          value: (item) =>
            Math.sign(both(item)) * Math.abs(scrub(item)) * (item.left_N + item.right_N),
          text: () =>
            phrase`That has the two brakes added up. To stop the car they do add; on the rack one wheel is the mirror image of the other and turns the other way.`,
        },
        {
          id: 'stronger-alone',
          confuses: 'stronger brake alone',
          value: (item) =>
            Math.sign(both(item)) * Math.abs(scrub(item)) * Math.max(item.left_N, item.right_N),
          text: () =>
            phrase`That is the stronger brake alone. It would be all if the other one did nothing; here the other wheel takes a part of it away.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the moment',
          value: (item, earlier) => -moment(item, earlier),
          text: () =>
            phrase`The size fits, but the direction of the moment is not the one in which the wheels go. Left is counterclockwise, seen from above.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * moment(item, earlier),
          text: () =>
            phrase`That multiplies newtons by millimetres. In N·m the lever has to be in metres, a thousand times smaller a number.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`${given(Math.max(item.left_N, item.right_N), 'N')} − ${term(given(Math.min(item.left_N, item.right_N), 'N'))} = ${given(Math.abs(item.left_N - item.right_N), 'N')}, and ${given(Math.abs(item.left_N - item.right_N), 'N')} · ${rounded(Math.abs(scrub(item)), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}, to the ${value > 0 ? 'left' : 'right'}.`,
    },
  ],
};
