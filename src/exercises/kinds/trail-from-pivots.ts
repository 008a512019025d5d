import type { Corner } from '#core/corner.ts';
import { casterOf } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerAtRoad, cornerOnPivots } from '../paper/corner.ts';
import { along_mm, fromCentre, rise_mm, type PivotsAlong } from '../paper/pivots.ts';
import { bare, computed, mm, phrase, rounded, si, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { pivotsFromSide } from '../pictures/given-measures.ts';
import { angleSlips } from '../slips/angle-slips.ts';
import { belowPivotSlips } from '../slips/pivot-slips.ts';

const slope = (item: PivotsAlong): number => along_mm(item) / rise_mm(item);
const lowerAhead = ({ lowerAhead_mm }: PivotsAlong): number => si(lowerAhead_mm, 'mm');

/** The corner whose axis goes rearward by so much for each metre up from the lower pivot. */
const onPivots = (item: PivotsAlong, slanted = slope(item)): Corner => {
  const [up, rise] = [si(item.lowerUp_mm, 'mm'), si(rise_mm(item), 'mm')];
  const ahead = lowerAhead(item);
  return cornerOnPivots({ ahead, up }, { ahead: ahead - rise * slanted, up: up + rise });
};

/** From two pivots down the axis to the road, and along to the contact centre. */
export const trailFromPivots: Kind<PivotsAlong> = {
  id: 'trail-from-pivots',
  version: 1,
  title: 'Down the axis, seen from the side',
  lesson: 'at-the-road',
  level: 2,
  draw: (random) => ({
    lowerAhead_mm: random.pick([-1, 1]) * random.integer(3, 24),
    lowerUp_mm: random.integer(160, 240),
    upperAhead_mm: -random.integer(20, 100),
    upperUp_mm: random.integer(520, 840),
  }),
  sound: (item) => slope(item) > 0.05 && slope(item) < 0.19,
  pattern: ({ lowerAhead_mm }) => (lowerAhead_mm > 0 ? 'lower ahead' : 'lower behind'),
  question: ({ lowerAhead_mm, lowerUp_mm, upperAhead_mm, upperUp_mm }) =>
    phrase`Seen from the side, the lower pivot sits ${fromCentre(lowerAhead_mm)} and ${mm(lowerUp_mm)} above the road, the upper pivot ${fromCentre(upperAhead_mm)} and ${mm(upperUp_mm)} above the road. The contact centre is straight below the wheel centre.`,
  ...cornerPictures<PivotsAlong>({
    view: 'side',
    pivots: true,
    given: (item) => ({
      corner: onPivots(item),
      axis: 'pivots',
      measures: pivotsFromSide(item),
    }),
    end: (item) => onPivots(item),
    parts: {
      caster: {
        of: 'caster',
        says: 'caster',
        to: (item, value) => onPivots(item, Math.tan(value)),
      },
      rake: {
        of: 'lowerLean',
        says: 'rake',
        to: (item, value) => onPivots(item, value / si(item.lowerUp_mm, 'mm')),
      },
      trail: {
        of: 'trail',
        says: 'trail',
        to: (item, value, earlier) => {
          const slanted = step(earlier, 1) / si(item.lowerUp_mm, 'mm');
          return {
            ...onPivots(item, slanted),
            axis: cornerAtRoad({ trail: value, caster: Math.atan(slanted) }).axis,
          };
        },
      },
    },
  }),
  parts: [
    {
      id: 'caster',
      quantity: QUANTITIES.caster,
      unit: 'deg',
      decimals: 1,
      label: 'Caster angle',
      value: (item) =>
        casterOf(
          axisThrough(
            { ahead: lowerAhead(item), up: si(item.lowerUp_mm, 'mm') },
            { ahead: si(item.upperAhead_mm, 'mm'), up: si(item.upperUp_mm, 'mm') },
          ),
        ),
      hint: () =>
        phrase`Between the pivots: how far along the car, how far up? Mind on which side of the wheel centre each one sits.`,
      slips: [
        ...angleSlips<PivotsAlong>({
          angle: 'caster angle',
          across: 'the step along the car',
          up: 'the step up',
          wrongWay: 'forward',
          tangent: slope,
        }),
        {
          id: 'side-of-the-lower-pivot',
          confuses: 'side of the lower pivot',
          value: (item) => Math.atan((-item.lowerAhead_mm - item.upperAhead_mm) / rise_mm(item)),
          text: ({ lowerAhead_mm }) =>
            lowerAhead_mm > 0
              ? phrase`That takes one distance from the other. It would be right if both pivots sat behind the wheel centre. The side of the lower pivot is ahead here, so the distances add up.`
              : phrase`That adds the two distances. It would be right if the wheel centre lay between the pivots. The side of the lower pivot is behind here, like that of the upper one: take the difference.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Along the car ${mm(item.lowerAhead_mm)} − ${term(mm(item.upperAhead_mm))} = ${mm(along_mm(item))}, up ${mm(rise_mm(item))}: the tangent is ${bare(slope(item), 4)}, so the caster is ${rounded(value, 'deg', 2)}, the top leaning rearward.`,
    },
    {
      id: 'rake',
      quantity: OWN_QUANTITIES.rakeBelowPivot,
      unit: 'mm',
      decimals: 1,
      label: 'From the lower pivot forward to where the axis meets the road',
      value: ({ lowerUp_mm }, earlier) => {
        const { axis } = cornerAtRoad({ caster: step(earlier, 0) });
        return axis.point.x - atHeight(axis, si(lowerUp_mm, 'mm')).x;
      },
      hint: () =>
        phrase`The same slant goes on below the lower pivot. How much height is left from there down to the road?`,
      slips: [...belowPivotSlips({ angle: 'caster', way: 'along' })],
      solution: ({ lowerUp_mm }, earlier, value) =>
        phrase`The height of the lower pivot times the tangent: ${mm(lowerUp_mm)} · tan ${rounded(step(earlier, 0), 'deg', 2)} = ${computed(value, 'length')}. Upward the axis leans rearward, so downward it goes forward.`,
    },
    {
      id: 'trail',
      quantity: QUANTITIES.trail,
      unit: 'mm',
      decimals: 1,
      label: 'Mechanical trail',
      value: (item, earlier) => lowerAhead(item) + step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Start below the wheel centre, where the contact centre is. Go to the lower pivot first, then on to where the axis meets the road.`,
      slips: [
        {
          id: 'pivot-left-out',
          confuses: 'place of the lower pivot',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That leaves the place of the lower pivot out. It would be the trail if the lower pivot sat straight below the wheel centre. Count from the contact centre.`,
        },
        {
          id: 'side-of-the-lower-pivot',
          confuses: 'side of the lower pivot',
          value: (item, earlier) => step(earlier, 1) - lowerAhead(item),
          text: () =>
            phrase`That has the side of the lower pivot turned round. Ahead of the wheel centre counts as positive, behind as negative; then both steps are added.`,
        },
        {
          id: 'turned-round',
          confuses: 'ahead and behind',
          value: (item, earlier) => -lowerAhead(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but ahead and behind have changed places. The word says where the axis meets the road, seen from the contact centre.`,
        },
        {
          id: 'from-the-upper-pivot',
          confuses: 'upper pivot',
          value: ({ upperAhead_mm }, earlier) => si(upperAhead_mm, 'mm') + step(earlier, 1),
          text: () =>
            phrase`That starts at the upper pivot. The step down to the road was worked out from the lower one, so start there.`,
        },
      ],
      solution: ({ lowerAhead_mm }, earlier, value) =>
        phrase`Ahead counts as positive: ${mm(lowerAhead_mm)} + ${term(computed(step(earlier, 1), 'length'))} = ${computed(value, 'length')}. The axis meets the road ${value > 0 ? 'ahead of' : 'behind'} the contact centre.`,
    },
  ],
};
