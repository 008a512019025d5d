import type { Corner } from '#core/corner.ts';
import { inclinationOf } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerOnPivots } from '../paper/corner.ts';
import { across_mm, rise, rise_mm, type PivotsAcross } from '../paper/pivots.ts';
import { bare, computed, mm, phrase, rounded, si } from '../phrase.ts';
import { angleOfStepSlips } from '../slips/pivot-slips.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { pivotsFromFront } from '../pictures/given-measures.ts';

const across = (item: PivotsAcross): number => si(across_mm(item), 'mm');

/** The corner whose upper pivot sits so far inboard of the lower one. */
const onPivots = (item: PivotsAcross, inboard = across(item)): Corner => {
  const out = si(item.lowerOut_mm, 'mm');
  return cornerOnPivots(
    { out, up: si(item.lowerUp_mm, 'mm') },
    { out: out - inboard, up: si(item.upperUp_mm, 'mm') },
    { out: out + 0.06 },
  );
};

/** The front view's angle from two points on a tape measure. */
export const inclinationFromPivots: Kind<PivotsAcross> = {
  id: 'inclination-from-pivots',
  version: 1,
  title: 'Two pivots seen from the front',
  lesson: 'two-points',
  level: 1,
  draw: (random) => {
    const lowerOut_mm = random.integer(600, 720);
    const lowerUp_mm = random.integer(170, 240);
    return {
      lowerOut_mm,
      lowerUp_mm,
      upperOut_mm: lowerOut_mm - random.integer(40, 170),
      upperUp_mm: lowerUp_mm + random.integer(300, 620),
    };
  },
  sound: (item) => across_mm(item) > 0.1 * rise_mm(item) && across_mm(item) < 0.3 * rise_mm(item),
  question: ({ lowerOut_mm, lowerUp_mm, upperOut_mm, upperUp_mm }) =>
    phrase`You stand in front of the car with a tape measure. The lower pivot sits ${mm(lowerOut_mm)} from the middle of the car and ${mm(lowerUp_mm)} above the road. The upper pivot sits ${mm(upperOut_mm)} from the middle of the car and ${mm(upperUp_mm)} above the road.`,
  ...cornerPictures<PivotsAcross>({
    view: 'front',
    pivots: true,
    wheelless: true,
    given: (item) => ({
      corner: onPivots(item),
      axis: 'pivots',
      measures: pivotsFromFront(item),
    }),
    end: (item) => onPivots(item),
    parts: {
      across: { of: 'pivotsLevel', says: 'across', to: onPivots, taken: { rise: 'pivotsUp' } },
      inclination: {
        of: 'inclination',
        says: 'inclination',
        to: (item, value) => onPivots(item, rise(item) * Math.tan(value)),
      },
    },
  }),
  parts: [
    {
      id: 'across',
      quantity: OWN_QUANTITIES.upperAcross,
      unit: 'mm',
      decimals: 0,
      label: 'From the lower pivot across to the upper one',
      value: across,
      sum: 'exact',
      hint: () =>
        phrase`Both distances start at the middle of the car. Which pivot is nearer to it, and by how much?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'upper pivot',
          value: (item) => -across(item),
          text: () =>
            phrase`That goes from the upper pivot to the lower one, and so has the upper one sit outboard. Start at the lower pivot: the smaller distance belongs to the pivot that is nearer to the middle of the car.`,
        },
        {
          id: 'rise',
          confuses: 'step up',
          value: rise,
          text: () =>
            phrase`That is the step up from pivot to pivot. It will be wanted in a moment. The step across comes from the two distances to the middle of the car.`,
        },
        {
          id: 'added',
          confuses: 'distances from the middle of the car',
          value: ({ lowerOut_mm, upperOut_mm }) => si(lowerOut_mm + upperOut_mm, 'mm'),
          text: () =>
            phrase`That adds the two distances from the middle of the car, as for two points on different sides of it: a lower pivot on the left and one on the right. These two are on one side, so only their difference lies between them.`,
        },
        {
          id: 'along-the-axis',
          confuses: 'length of the axis',
          value: (item) => Math.hypot(across(item), rise(item)),
          text: () =>
            phrase`That is the length of the axis from pivot to pivot, along its slant. A tape held from one to the other would show it. The step across is level.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The upper pivot is nearer to the middle of the car: ${mm(item.lowerOut_mm)} − ${mm(item.upperOut_mm)} = ${rounded(value, 'mm', 0)}, inboard.`,
    },
    {
      id: 'inclination',
      quantity: QUANTITIES.inclination,
      unit: 'deg',
      decimals: 1,
      label: 'Steering-axis inclination',
      value: (item, earlier) =>
        inclinationOf(axisThrough({ out: step(earlier, 0) }, { up: rise(item) }), 'left'),
      hint: () =>
        phrase`Sketch the triangle: the step across, the step up, and the axis as its slanted side. The inclination sits at the lower pivot, between the axis and upright.`,
      slips: [
        ...angleOfStepSlips({
          angle: 'inclination',
          across: 'the step across',
          wrongWay: 'outboard',
        }),
      ],
      solution: (item, earlier, value) =>
        phrase`The step up is ${mm(item.upperUp_mm)} − ${mm(item.lowerUp_mm)} = ${mm(rise_mm(item))}. Across over up is ${bare(step(earlier, 0) / rise(item), 4)}, and the angle with that tangent is ${computed(value, 'angle')}: the top of the axis leans inboard.`,
    },
  ],
};
