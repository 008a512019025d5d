import type { Corner } from '#core/corner.ts';
import { casterOf } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerOnPivots } from '../paper/corner.ts';
import { along_mm, fromCentre, rise, rise_mm, type PivotsAlong } from '../paper/pivots.ts';
import { bare, computed, mm, phrase, rounded, si, term } from '../phrase.ts';
import { angleOfStepSlips } from '../slips/pivot-slips.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { pivotsFromSide } from '../pictures/given-measures.ts';

const along = (item: PivotsAlong): number => si(along_mm(item), 'mm');

/** The corner whose upper pivot sits so far rearward of the lower one. */
const onPivots = (item: PivotsAlong, rearward = along(item)): Corner => {
  const ahead = si(item.lowerAhead_mm, 'mm');
  return cornerOnPivots(
    { ahead, up: si(item.lowerUp_mm, 'mm') },
    { ahead: ahead - rearward, up: si(item.upperUp_mm, 'mm') },
  );
};

/** The side view's angle, with the pivots on one side of the wheel centre or on both. */
export const casterFromPivots: Kind<PivotsAlong> = {
  id: 'caster-from-pivots',
  version: 1,
  title: 'Two pivots seen from the side',
  lesson: 'two-points',
  level: 2,
  draw: (random) => ({
    lowerAhead_mm: random.pick([-1, 1]) * random.integer(4, 24),
    lowerUp_mm: random.integer(170, 240),
    upperAhead_mm: -random.integer(20, 90),
    upperUp_mm: random.integer(520, 840),
  }),
  sound: (item) => along_mm(item) > 0.04 * rise_mm(item) && along_mm(item) < 0.17 * rise_mm(item),
  pattern: ({ lowerAhead_mm }) => (lowerAhead_mm > 0 ? 'on both sides' : 'on one side'),
  question: ({ lowerAhead_mm, lowerUp_mm, upperAhead_mm, upperUp_mm }) =>
    phrase`Seen from the side, the lower pivot sits ${fromCentre(lowerAhead_mm)} and ${mm(lowerUp_mm)} above the road. The upper pivot sits ${fromCentre(upperAhead_mm)} and ${mm(upperUp_mm)} above the road.`,
  ...cornerPictures<PivotsAlong>({
    view: 'side',
    pivots: true,
    wheelless: true,
    given: (item) => ({
      corner: onPivots(item),
      axis: 'pivots',
      measures: pivotsFromSide(item),
      points: [{ at: 'centre', says: 'wheel centre' }],
    }),
    end: (item) => onPivots(item),
    parts: {
      along: { of: 'pivotsLevel', says: 'along', to: onPivots, taken: { rise: 'pivotsUp' } },
      caster: {
        of: 'caster',
        says: 'caster',
        to: (item, value) => onPivots(item, rise(item) * Math.tan(value)),
      },
    },
  }),
  parts: [
    {
      id: 'along',
      quantity: OWN_QUANTITIES.upperAlong,
      unit: 'mm',
      decimals: 0,
      label: 'From the lower pivot along the car to the upper one',
      value: along,
      sum: 'exact',
      hint: () =>
        phrase`Mark the wheel centre on a line, then both pivots, each on its side. How far is it from one mark to the other?`,
      slips: [
        {
          id: 'side-of-the-lower-pivot',
          confuses: 'side of the lower pivot',
          value: ({ lowerAhead_mm, upperAhead_mm }) => si(-lowerAhead_mm - upperAhead_mm, 'mm'),
          text: ({ lowerAhead_mm }) =>
            lowerAhead_mm > 0
              ? phrase`That takes one distance from the other. It would be right if both pivots sat behind the wheel centre. Here the side of the lower pivot is ahead, so the wheel centre lies between the two and the distances add up.`
              : phrase`That adds the two distances. It would be right if the wheel centre lay between the pivots. Here the side of the lower pivot is behind, like that of the upper one, so only the difference is between them.`,
        },
        {
          id: 'turned-round',
          confuses: 'ahead and behind',
          value: (item) => -along(item),
          text: () =>
            phrase`The size fits, but ahead and behind have changed places: the way from the lower pivot to the upper one goes toward the rear of the car.`,
        },
        {
          id: 'upper-alone',
          confuses: 'distance from the wheel centre',
          value: ({ upperAhead_mm }) => -si(upperAhead_mm, 'mm'),
          text: () =>
            phrase`That is the upper pivot’s distance from the wheel centre. It would do if the lower pivot sat straight below the wheel centre. It does not: count from the lower pivot.`,
        },
        {
          id: 'rise',
          confuses: 'step up',
          value: rise,
          text: () =>
            phrase`That is the step up from pivot to pivot. It will be wanted for the angle. The step along the car comes from the two distances to the wheel centre.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Ahead counts as positive, behind as negative: ${mm(item.lowerAhead_mm)} − ${term(mm(item.upperAhead_mm))} = ${rounded(value, 'mm', 0)}, by which the upper pivot sits rearward of the lower one.`,
    },
    {
      id: 'caster',
      quantity: QUANTITIES.caster,
      unit: 'deg',
      decimals: 1,
      label: 'Caster angle',
      value: (item, earlier) =>
        casterOf(axisThrough({ ahead: step(earlier, 0) }, { up: rise(item) })),
      hint: () =>
        phrase`Sketch the triangle: the step along the car, the step up, and the axis as its slanted side. The caster sits at the lower pivot, between the axis and upright.`,
      slips: [
        ...angleOfStepSlips({
          angle: 'caster angle',
          across: 'the step along the car',
          wrongWay: 'forward',
        }),
      ],
      solution: (item, earlier, value) =>
        phrase`The step up is ${mm(item.upperUp_mm)} − ${mm(item.lowerUp_mm)} = ${mm(rise_mm(item))}. Along over up is ${bare(step(earlier, 0) / rise(item), 4)}, and the angle with that tangent is ${computed(value, 'angle')}: the top of the axis leans rearward.`,
    },
  ],
};
