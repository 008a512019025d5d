import type { Corner, Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { leverOf, momentWithLever, type Along } from '../paper/along.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import {
  computed,
  deg,
  directed,
  given,
  mm,
  phrase,
  rounded,
  si,
  sign,
  type Phrase,
} from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

type Case = 'caliper' | 'inboard' | 'recuperation' | 'drive' | 'edge';

interface Item {
  readonly which: Case;
  readonly side: Side;
  readonly force_N: number;
  readonly scrub_mm: number;
  readonly spindle_mm: number;
  readonly inclination_deg: number;
}

interface CaseFacts {
  /** What happens to which wheel, with which force: the first sentence of the question. */
  readonly tells: (side: Side, force: Phrase) => Phrase;
  /** Why the force counts where it does. */
  readonly why: string;
  readonly by: Along['by'];
  /** +1 forward, −1 rearward. */
  readonly ahead: 1 | -1;
}

const CASES: Readonly<Record<Case, CaseFacts>> = {
  caliper: {
    tells: (side, force) =>
      phrase`A car brakes with calipers that are bolted to its front carriers. The road holds the ${side} front tyre back with ${force}.`,
    why: 'The caliper hands the torque to the carrier, so the force counts at the road, with the scrub radius',
    by: 'brake',
    ahead: -1,
  },
  inboard: {
    tells: (side, force) =>
      phrase`A car has its front brake discs inboard, beside the gearbox, and brakes. The road holds the ${side} front tyre back with ${force}.`,
    why: 'The torque goes through the shaft to the disc in the car, so the force counts at the wheel centre, with the spindle offset',
    by: 'shaft',
    ahead: -1,
  },
  recuperation: {
    tells: (side, force) =>
      phrase`An electric car slows down by recuperation alone, with its motor on the front wheels. The road holds the ${side} front tyre back with ${force}.`,
    why: 'The torque goes through the shaft to the motor, so the force counts at the wheel centre, with the spindle offset',
    by: 'shaft',
    ahead: -1,
  },
  drive: {
    tells: (side, force) =>
      phrase`A front-drive car pulls a trailer uphill. The road pushes the ${side} front tyre forward with ${force}.`,
    why: 'The torque comes through the shaft, so the force counts at the wheel centre, with the spindle offset',
    by: 'shaft',
    ahead: 1,
  },
  edge: {
    tells: (side, force) =>
      phrase`A car rolls across a sharp-edged hole with its brakes off. The edge pushes the ${side} front wheel rearward with ${force} along the car.`,
    why: 'A wheel that rolls freely takes no torque, so the force counts at the wheel centre, with the spindle offset',
    by: 'edge',
    ahead: -1,
  },
};

const atRoad = ({ which }: Item): boolean => CASES[which].by === 'brake';
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const cos = (item: Item): number => Math.cos(inclination(item));
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const offset = (item: Item): number => (atRoad(item) ? scrub(item) : spindle(item));
const other = (item: Item): number => (atRoad(item) ? spindle(item) : scrub(item));

/** Moment with a lever of that size on the side where the axis passes. */
function turned(item: Item, lever: number, inboard: number): number {
  const { by, ahead } = CASES[item.which];
  const force = by === 'shaft' ? ahead * item.force_N : item.force_N;
  return momentWithLever(Math.sign(inboard) * lever, item.side, { by, force });
}

const moment = (item: Item, earlier: Earlier): number =>
  turned(item, step(earlier, 0), offset(item));

/** The corner that has both offsets with this inclination. */
const atBothHeights = (item: Item): Corner =>
  cornerAtRoad({
    scrubRadius: scrub(item),
    inclination: inclination(item),
    loadedRadius: (spindle(item) - scrub(item)) / Math.tan(inclination(item)),
  });

/** The force where it counts for the carrier. */
const counted = (item: Item): SeenForce => ({
  at: atRoad(item) ? 'road' : 'centre',
  force: CASES[item.which].ahead * item.force_N,
  says: given(item.force_N, 'N').figure,
});

/** Who holds the torque? That decides between the scrub radius and the spindle offset. */
export const leverByCase: Kind<Item> = {
  id: 'lever-by-case',
  version: 1,
  title: 'Which lever?',
  lesson: 'braking-at-the-ground',
  level: 2,
  draw: (random) => ({
    which: random.pick(['caliper', 'caliper', 'inboard', 'recuperation', 'drive', 'edge']),
    side: random.pick(['left', 'right']),
    force_N: 50 * random.integer(16, 80),
    scrub_mm: random.pick([-1, 1]) * random.integer(16, 36),
    spindle_mm: random.integer(55, 98),
    inclination_deg: 0.5 * random.integer(26, 34),
  }),
  sound: (item) => Math.abs(spindle(item) - Math.abs(scrub(item))) > 0.02,
  pattern: ({ which }) => which,
  question: ({ which, side, force_N, scrub_mm, spindle_mm, inclination_deg }) =>
    phrase`${CASES[which].tells(side, [given(force_N, 'N')])} Its steering axis leans ${deg(inclination_deg)} inboard without caster; the scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}, the spindle offset ${directed(spindle_mm, 'mm', QUANTITIES.spindleOffset)}.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => atBothHeights(item),
    given: (item) => ({
      measures: [
        { of: 'spindleOffset', says: mm(Math.abs(item.spindle_mm)).figure },
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
      ],
    }),
    forces: (item) => [counted(item)],
    parts: {
      lever: { seen: 'lever', force: counted },
      moment: { seen: 'moment', force: counted },
    },
  }),
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 1,
      label: 'Lever about the steering axis',
      value: (item) => {
        const { by } = CASES[item.which];
        const lean = { inclination: inclination(item) };
        return leverOf(
          atRoad(item)
            ? cornerAtRoad({ scrubRadius: scrub(item), ...lean })
            : cornerAtCentre({ spindleOffset: spindle(item), ...lean }),
          by,
        );
      },
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`Ask who holds against the spinning of the wheel. If it is the carrier, the force counts at the road; otherwise at the wheel centre. Of the offset there a leaning axis takes the cosine of its lean.`,
      slips: [
        {
          id: 'other-height',
          confuses: 'other height',
          value: (item) => Math.abs(other(item)) * cos(item),
          text: (item) =>
            atRoad(item)
              ? phrase`That is the lever at the other height: the wheel centre. It would be right if a shaft held the torque. Here the caliper does, and it sits on the carrier: the force counts at the road.`
              : phrase`That is the lever at the other height: the road. It would be right if a caliper on the carrier held the torque. Here nobody on the carrier does: the force counts at the wheel centre.`,
        },
        {
          id: 'both-added',
          confuses: 'both offsets together',
          value: (item) => (spindle(item) + Math.abs(scrub(item))) * cos(item),
          text: () =>
            phrase`That takes both offsets together, as if the force were felt at both heights. It is one force, and it counts at one of them; which one, the torque decides.`,
        },
        {
          id: 'difference',
          confuses: 'lean between the two heights',
          value: (item) => (spindle(item) - Math.abs(scrub(item))) * cos(item),
          text: () =>
            phrase`That takes one offset from the other. With the signs minded it would be the lean between the two heights, which is no lever. Choose one of them.`,
        },
        {
          id: 'sine',
          confuses: 'sine',
          value: (item) => Math.abs(offset(item)) * Math.sin(inclination(item)),
          text: () =>
            phrase`That takes the sine. A hinge that leans a little still takes nearly all of the turning: its share is the cosine, which is close to one here.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`${CASES[item.which].why}. The leaning axis takes ${mm(Math.abs(atRoad(item) ? item.scrub_mm : item.spindle_mm))} · cos ${deg(item.inclination_deg)} = ${computed(value, 'length')} of it.`,
    },
    {
      id: 'moment',
      quantity: OWN_QUANTITIES.momentOfForce,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment about the steering axis',
      value: moment,
      hint: () =>
        phrase`Force times lever, in newtons and metres. Then look from above: on which side of the axis does the force push, and which way?`,
      slips: [
        ...momentSlips(moment),
        {
          id: 'other-height',
          confuses: 'other height',
          value: (item) => turned(item, Math.abs(other(item)) * cos(item), other(item)),
          text: () =>
            phrase`That works with the lever at the other height. Ask who holds the torque: a caliper on the carrier brings the force down to the road, anybody else leaves it at the wheel centre.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${given(item.force_N, 'N')} · ${rounded(step(earlier, 0), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. The force pushes ${CASES[item.which].ahead > 0 ? 'forward' : 'rearward'} and the axis passes ${offset(item) > 0 ? 'inboard' : 'outboard'} of it, so it turns the ${item.side} wheel ${sign(value, OWN_QUANTITIES.momentOfForce)}.`,
    },
  ],
};
