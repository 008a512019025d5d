import type { Side } from '#core/corner.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { sideMoment } from '../paper/across.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import type { CornerMeasure, CornerPicture } from '../pictures/picture.ts';

interface Item {
  readonly bend: Side;
  readonly side: Side;
  readonly force_N: number;
  readonly trail_mm: number;
  readonly tyre_mm: number;
}

const trail = ({ trail_mm }: Item): number => si(trail_mm, 'mm');
const tyre = ({ tyre_mm }: Item): number => si(tyre_mm, 'mm');
/** To the left positive, as the bend goes. */
const force = ({ bend, force_N }: Item): number => (bend === 'left' ? force_N : -force_N);
const moment = (item: Item, lever: number): number =>
  sideMoment(item.side, { trail: lever }, force(item), 0);
const whole = keptStep((item: Item, earlier: Earlier): number => moment(item, step(earlier, 0)));

/** The wheel from the side, with the force where the tyre takes it. */
const pushed = (item: Item): CornerPicture => {
  const left = cornerAtRoad({ trail: trail(item) });
  const outboard = item.bend === item.side ? 1 : -1;
  return {
    ...{ scene: 'corner', view: 'side' },
    corner: item.side === 'left' ? left : mirroredCorner(left),
    forces: [
      {
        at: 'road',
        towards: [0, outboard, 0],
        says: given(item.force_N, 'N').figure,
        behind: tyre(item),
      },
    ],
  };
};

/** What was taken for the whole lever. */
const TAKEN: Readonly<Record<string, CornerMeasure>> = {
  'axis-only': 'trail',
  'at-the-contact-centre': 'trail',
  'tyre-only': 'tyreTrail',
};

/** A side force, and the two trails that make its lever. */
export const sideForceMoment: Kind<Item> = {
  id: 'side-force-moment',
  version: 1,
  title: 'What a bend does to the steering',
  lesson: 'side-weight-parking',
  level: 1,
  draw: (random) => ({
    bend: random.pick(['left', 'right']),
    side: random.pick(['left', 'right']),
    force_N: random.grid(800, 3200, 100),
    trail_mm: random.integer(8, 40),
    tyre_mm: random.integer(10, 30),
  }),
  sound: () => true,
  question: ({ bend, side, force_N, trail_mm, tyre_mm }) =>
    phrase`A car drives round a bend to the ${bend}. The road pushes its ${side} front tyre to the ${bend} with ${given(force_N, 'N')}. The steering axis stands upright and meets the road ${mm(trail_mm)} ahead of the contact centre. The tyre takes the side force ${mm(tyre_mm)} behind it.`,
  picture: (item) => ({
    ...pushed(item),
    measures: [
      { of: 'trail', says: mm(item.trail_mm).figure },
      { of: 'tyreTrail', says: mm(item.tyre_mm).figure },
    ],
  }),
  solved: (item) => ({
    ...pushed(item),
    measures: [
      {
        of: 'sideLever',
        says: `lever ${rounded(trail(item) + tyre(item), 'mm', 0).figure}`,
      },
    ],
  }),
  wrong: (item, road) => {
    const taken = TAKEN[road.slip];
    if (taken)
      return {
        ...pushed(item),
        measures: [{ of: 'sideLever', says: 'lever' }],
        wrong: { measures: [{ of: taken, says: 'yours' }] },
      };
    if (road.slip !== 'into-the-bend') return undefined;
    const { corner, forces } = pushed(item);
    return {
      ...{ scene: 'corner', view: 'top', corner },
      ...(forces && { forces }),
      turn: { left: road.answer > 0, says: 'turns it' },
      wrong: { turn: { left: road.value > 0, says: 'yours' } },
    };
  },
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 0,
      label: 'Lever of the side force about the axis',
      value: (item) => trail(item) + tyre(item),
      sum: 'exact',
      possible: (value) => value > 0,
      hint: () =>
        phrase`Look from above along the wheel: the axis, then the contact centre, then the place where the force acts. How far is it from the first to the last?`,
      slips: [
        {
          id: 'axis-only',
          confuses: 'mechanical trail',
          value: trail,
          text: () =>
            phrase`That is the mechanical trail alone, the lever that steering axis and wheel make. It would be right for a force at the contact centre. The tyre takes it farther back.`,
        },
        {
          id: 'tyre-only',
          confuses: 'pneumatic trail',
          value: tyre,
          text: () =>
            phrase`That is the pneumatic trail alone, the tyre’s own share. It would be right if the axis met the road at the contact centre. Here it meets the road ahead of that.`,
        },
        {
          id: 'taken-away',
          confuses: 'two trails',
          value: (item) => trail(item) - tyre(item),
          text: () =>
            phrase`That takes one of the two trails from the other. It would be right if both lay on the same side of the contact centre. One is ahead of it, one behind: add them.`,
        },
        {
          id: 'middle',
          confuses: 'middle of the two',
          value: (item) => (trail(item) + tyre(item)) / 2,
          text: () =>
            phrase`That is the middle of the two trails. A mean is for two readings of one thing. Here are two lengths, one after the other, and the lever reaches over both.`,
        },
      ],
      solution: ({ trail_mm, tyre_mm }, _earlier, value) =>
        phrase`Mechanical and pneumatic trail lie one behind the other: ${mm(trail_mm)} + ${mm(tyre_mm)} = ${rounded(value, 'mm', 0)}.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.sideMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the side force about the axis',
      value: whole,
      hint: () =>
        phrase`Force times lever, with the lever in metres. The force pushes the tail of the wheel, behind the axis, toward the inside of the bend. Which way does its front go?`,
      slips: [
        {
          id: 'into-the-bend',
          confuses: 'direction',
          value: (item, earlier) => -whole(item, earlier),
          text: () =>
            phrase`The size fits, the direction does not: this would pull the wheel farther into the bend, as with an axis that meets the road behind the tyre. The force acts behind the axis and takes the tail along, so the front goes the other way.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * whole(item, earlier),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres, a thousand times smaller a number.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item, earlier) => 2 * whole(item, earlier),
          text: () =>
            phrase`That counts both wheels. In a bend they do pull the same way and add on the rack, but the outer one carries more. Here one wheel is asked for.`,
        },
        {
          id: 'at-the-contact-centre',
          confuses: 'mechanical trail',
          value: (item) => moment(item, trail(item)),
          text: () =>
            phrase`That works with the mechanical trail alone, as if the force acted at the contact centre. The tyre’s own trail comes on top of it.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${given(item.force_N, 'N')} · ${rounded(step(earlier, 0), 'm', 4)} = ${rounded(Math.abs(value), 'Nm', 1)}. The force pushes the wheel to the ${item.bend}, behind the axis, so its front is turned ${sign(value, QUANTITIES.sideMoment)}: out of the bend.`,
    },
  ],
};
