import type { Corner } from '#core/corner.ts';
import { inclinationOf } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerAtRoad, cornerOnPivots } from '../paper/corner.ts';
import { across_mm, rise_mm, type PivotsAcross } from '../paper/pivots.ts';
import { bare, computed, mm, phrase, rounded, si } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { pivotsFromFront } from '../pictures/given-measures.ts';
import { angleSlips } from '../slips/angle-slips.ts';
import { belowPivotSlips } from '../slips/pivot-slips.ts';

/** The two pivots, and how far out from the middle of the car the contact centre is. */
interface Item extends PivotsAcross {
  readonly contact_mm: number;
}

const slope = (item: Item): number => across_mm(item) / rise_mm(item);
/** From the lower pivot out to the contact centre. */
const reach = ({ lowerOut_mm, contact_mm }: Item): number => si(contact_mm - lowerOut_mm, 'mm');

/** Where a corner stands whose axis is given at the road. */
const OUT = cornerAtRoad({}).wheelCentre.y;

/** The corner whose axis goes inboard by so much for each metre up from the lower pivot. */
const onPivots = (item: Item, slanted = slope(item)): Corner => {
  const [out, up, rise] = [
    si(item.lowerOut_mm, 'mm'),
    si(item.lowerUp_mm, 'mm'),
    si(rise_mm(item), 'mm'),
  ];
  return cornerOnPivots(
    { out, up },
    { out: out - rise * slanted, up: up + rise },
    { out: si(item.contact_mm, 'mm') },
  );
};

/** From two pivots down the axis to the road, and across to the contact centre. */
export const scrubFromPivots: Kind<Item> = {
  id: 'scrub-from-pivots',
  version: 1,
  title: 'Down the axis, seen from the front',
  lesson: 'at-the-road',
  level: 2,
  draw: (random) => {
    const lowerOut_mm = random.integer(600, 720);
    const lowerUp_mm = random.integer(160, 240);
    return {
      lowerOut_mm,
      lowerUp_mm,
      upperOut_mm: lowerOut_mm - random.integer(40, 160),
      upperUp_mm: lowerUp_mm + random.integer(320, 620),
      contact_mm: lowerOut_mm + random.integer(20, 100),
    };
  },
  sound: (item) => {
    const scrub_mm = item.contact_mm - item.lowerOut_mm - item.lowerUp_mm * slope(item);
    return slope(item) > 0.1 && slope(item) < 0.3 && scrub_mm > -30 && scrub_mm < 60;
  },
  question: ({ lowerOut_mm, lowerUp_mm, upperOut_mm, upperUp_mm, contact_mm }) =>
    phrase`Seen from the front, the lower pivot sits ${mm(lowerOut_mm)} from the middle of the car and ${mm(lowerUp_mm)} above the road, the upper pivot ${mm(upperOut_mm)} from the middle and ${mm(upperUp_mm)} above the road. The contact centre is ${mm(contact_mm)} from the middle of the car.`,
  ...cornerPictures<Item>({
    view: 'front',
    pivots: true,
    given: (item) => ({
      corner: onPivots(item),
      axis: 'pivots',
      measures: [...pivotsFromFront(item), { of: 'contactOut', says: mm(item.contact_mm).figure }],
    }),
    end: (item) => onPivots(item),
    parts: {
      inclination: {
        of: 'inclination',
        says: 'inclination',
        to: (item, value) => onPivots(item, Math.tan(value)),
      },
      lean: {
        of: 'lowerLean',
        says: 'lean',
        to: (item, value) => onPivots(item, value / si(item.lowerUp_mm, 'mm')),
      },
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value, earlier) => {
          const slanted = step(earlier, 1) / si(item.lowerUp_mm, 'mm');
          return {
            ...onPivots(item, slanted),
            axis: cornerAtRoad({
              scrubRadius: value + OUT - si(item.contact_mm, 'mm'),
              inclination: Math.atan(slanted),
            }).axis,
          };
        },
      },
    },
  }),
  parts: [
    {
      id: 'inclination',
      quantity: QUANTITIES.inclination,
      unit: 'deg',
      decimals: 1,
      label: 'Steering-axis inclination',
      value: (item) =>
        inclinationOf(
          axisThrough(
            { out: si(item.lowerOut_mm, 'mm'), up: si(item.lowerUp_mm, 'mm') },
            { out: si(item.upperOut_mm, 'mm'), up: si(item.upperUp_mm, 'mm') },
          ),
          'left',
        ),
      hint: () =>
        phrase`Between the pivots: how far across, how far up? The inclination sits between the axis and upright.`,
      slips: [
        ...angleSlips<Item>({
          angle: 'inclination',
          across: 'the step across',
          up: 'the step up',
          wrongWay: 'outboard',
          tangent: slope,
        }),
        {
          id: 'height-above-the-road',
          confuses: 'height above the road',
          value: (item) => Math.atan(across_mm(item) / item.upperUp_mm),
          text: () =>
            phrase`That divides by the upper pivot’s height above the road. It would be right if the lower pivot stood on the road. Take the step up from the lower pivot.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Across ${mm(across_mm(item))}, up ${mm(rise_mm(item))}: the tangent is ${bare(slope(item), 4)}, so the inclination is ${rounded(value, 'deg', 2)}, the top leaning inboard.`,
    },
    {
      id: 'lean',
      quantity: OWN_QUANTITIES.leanBelowPivot,
      unit: 'mm',
      decimals: 1,
      label: 'From the lower pivot out to where the axis meets the road',
      value: ({ lowerUp_mm }, earlier) => {
        const { axis } = cornerAtRoad({ inclination: step(earlier, 0) });
        return axis.point.y - atHeight(axis, si(lowerUp_mm, 'mm')).y;
      },
      hint: () =>
        phrase`The same lean goes on below the lower pivot. How much height is left from there down to the road?`,
      slips: [...belowPivotSlips<Item>({ angle: 'inclination', way: 'across' })],
      solution: ({ lowerUp_mm }, earlier, value) =>
        phrase`The height of the lower pivot times the tangent: ${mm(lowerUp_mm)} · tan ${rounded(step(earlier, 0), 'deg', 2)} = ${computed(value, 'length')}. Upward the axis leans inboard, so downward it goes outboard.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius',
      value: (item, earlier) => reach(item) - step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Count both from the lower pivot: how far out is the contact centre, and how far out does the axis meet the road?`,
      slips: [
        {
          id: 'upright-axis',
          confuses: 'lower pivot',
          value: reach,
          text: () =>
            phrase`That is the distance from the lower pivot to the contact centre. It would be the scrub radius of an upright axis. This one leans, and meets the road farther out.`,
        },
        {
          id: 'wrong-way',
          confuses: 'lean of the axis',
          value: (item, earlier) => reach(item) + step(earlier, 1),
          text: () =>
            phrase`That adds the lean of the axis, as if it went inboard on its way down. Going up it leans inboard, so going down it comes outboard, toward the contact centre or past it.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => step(earlier, 1) - reach(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The word says where the axis meets the road, seen from the contact centre.`,
        },
        {
          id: 'from-the-upper-pivot',
          confuses: 'upper pivot',
          value: ({ upperOut_mm, contact_mm }, earlier) =>
            si(contact_mm - upperOut_mm, 'mm') - step(earlier, 1),
          text: () =>
            phrase`That counts from the upper pivot. The lean that was worked out starts at the lower one, so count the contact centre from there too.`,
        },
      ],
      solution: ({ lowerOut_mm, contact_mm }, earlier, value) =>
        phrase`From the lower pivot the contact centre is ${mm(contact_mm)} − ${mm(lowerOut_mm)} = ${mm(contact_mm - lowerOut_mm)} out, the axis ${computed(step(earlier, 1), 'length')}. The difference is ${computed(value, 'length')}: the axis meets the road ${value > 0 ? 'nearer to the middle of the car, inboard' : 'farther out, outboard'} of the contact centre.`,
    },
  ],
};
