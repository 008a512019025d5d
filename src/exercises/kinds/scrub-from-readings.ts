import type { Corner } from '#core/corner.ts';
import { axisInAt, modelOf } from '#core/own-car/front-geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad, cornerOnPivots } from '../paper/corner.ts';
import { mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  readonly lowerIn_mm: number;
  readonly upperIn_mm: number;
  readonly lowerUp_mm: number;
  readonly upperUp_mm: number;
  readonly middle_mm: number;
}

const lowerIn = ({ lowerIn_mm }: Item): number => si(lowerIn_mm, 'mm');
const upperIn = ({ upperIn_mm }: Item): number => si(upperIn_mm, 'mm');
const lowerUp = ({ lowerUp_mm }: Item): number => si(lowerUp_mm, 'mm');
const upperUp = ({ upperUp_mm }: Item): number => si(upperUp_mm, 'mm');
const middle = ({ middle_mm }: Item): number => si(middle_mm, 'mm');
/** The contact centre’s place stands for the half rim of an upright wheel. */
const readings = (item: Item): readonly number[] => [
  middle(item),
  lowerIn(item),
  upperIn(item),
  lowerUp(item),
  upperUp(item),
  0,
  0,
];
const lean = (item: Item): number => lowerIn(item) - axisInAt(0)(readings(item));
/** The step inboard from the lower pivot to the upper one. */
const across = (item: Item): number => upperIn(item) - lowerIn(item);

/** How far the axis goes inboard for each metre up. */
const slope = (item: Item): number => across(item) / (upperUp(item) - lowerUp(item));

/** The corner whose axis leans so much; where it stands is nobody’s concern, its middle at half a track. */
const onPivots = (item: Item, slanted = slope(item)): Corner => {
  const { y } = cornerAtRoad({}).wheelCentre;
  const out = y + middle(item) - lowerIn(item);
  const [up, rise] = [lowerUp(item), upperUp(item) - lowerUp(item)];
  return cornerOnPivots({ out, up }, { out: out - rise * slanted, up: up + rise }, { out: y });
};

/** Scrub radius from plumb lines, a tape on the floor and three heights. */
export const scrubFromReadings: Kind<Item> = {
  id: 'scrub-from-readings',
  version: 1,
  title: 'Marks on the floor',
  lesson: 'measuring-your-own-car',
  level: 2,
  draw: (random) => ({
    lowerIn_mm: random.integer(100, 180),
    upperIn_mm: random.integer(160, 300),
    lowerUp_mm: random.integer(170, 230),
    upperUp_mm: random.integer(450, 900),
    middle_mm: random.integer(70, 105),
  }),
  sound: (item) => {
    const scrub = modelOf('scrubRadius')(readings(item));
    return slope(item) > 0.1 && slope(item) < 0.3 && Math.abs(scrub) < 0.055;
  },
  question: (item) =>
    phrase`You have dropped plumb lines beside a left front wheel and laid a tape on the floor, square to the rim line. Inboard of that line lie the mark below the lower pivot, ${mm(item.lowerIn_mm)}, the mark below the upper pivot, ${mm(item.upperIn_mm)}, and the middle of the tyre’s print, ${mm(item.middle_mm)}. The lower pivot is ${mm(item.lowerUp_mm)} above the floor, the upper one ${mm(item.upperUp_mm)}. What is the scrub radius?`,
  ...cornerPictures<Item>({
    view: 'front',
    pivots: true,
    given: (item) => ({
      corner: onPivots(item),
      axis: 'pivots',
      measures: [
        { of: 'lowerUp', says: mm(item.lowerUp_mm).figure },
        { of: 'upperUp', says: mm(item.upperUp_mm).figure },
      ],
    }),
    end: (item) => onPivots(item),
    parts: {
      lean: {
        of: 'lowerLean',
        says: 'lean',
        to: (item, value) => onPivots(item, value / lowerUp(item)),
      },
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value, earlier) => {
          const slanted = (lowerIn(item) - step(earlier, 1)) / lowerUp(item);
          return {
            ...onPivots(item, slanted),
            axis: cornerAtRoad({ scrubRadius: value, inclination: Math.atan(slanted) }).axis,
          };
        },
      },
    },
  }),
  parts: [
    {
      id: 'lean',
      quantity: OWN_QUANTITIES.leanBelowPivot,
      unit: 'mm',
      decimals: 1,
      label: 'How far the axis goes on outboard below the lower pivot',
      value: lean,
      hint: () =>
        phrase`Between the pivots the axis steps across by so much in so much height. How much is that in the height of the lower pivot?`,
      slips: [
        {
          id: 'step-between',
          confuses: 'step between the pivots',
          value: across,
          text: () =>
            phrase`That is the step between the pivots, over the height that lies between them. Below the lower pivot there is less height, and so a smaller step.`,
        },
        {
          id: 'from-the-top',
          confuses: 'height of the upper pivot',
          value: (item) => (upperUp(item) * across(item)) / (upperUp(item) - lowerUp(item)),
          text: () =>
            phrase`That takes the height of the upper pivot down to the floor. It would be right for the whole step from the upper mark. Asked for is only the part below the lower pivot.`,
        },
        {
          id: 'heights-above-floor',
          confuses: 'height between the pivots',
          value: (item) => (lowerUp(item) * across(item)) / upperUp(item),
          text: () =>
            phrase`That divides by the height of the upper pivot above the floor. The step across happens in the height between the pivots: take the lower height off.`,
        },
        {
          id: 'upside-down',
          confuses: 'slope upside down',
          value: (item) => (lowerUp(item) * (upperUp(item) - lowerUp(item))) / across(item),
          text: () =>
            phrase`That has the slope upside down: height over step instead of step over height. An axis that stands nearly upright steps only a little.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Step over height between the pivots, times the height below: ${mm(item.lowerUp_mm)} · ${mm(item.upperIn_mm - item.lowerIn_mm)} ÷ ${mm(item.upperUp_mm - item.lowerUp_mm)} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.leanBelowPivot)}.`,
    },
    {
      id: 'at-the-floor',
      quantity: OWN_QUANTITIES.axisAtFloor,
      unit: 'mm',
      decimals: 1,
      label: 'Where the axis meets the floor, inboard of the rim line',
      value: (item, earlier) => lowerIn(item) - step(earlier, 0),
      sum: 'rounded',
      hint: () =>
        phrase`Going down, the axis comes outboard: toward the rim line, or away from it?`,
      slips: [
        {
          id: 'added',
          confuses: 'direction of the lean',
          value: (item, earlier) => lowerIn(item) + step(earlier, 0),
          text: () =>
            phrase`That has the direction of the lean turned round. The upper mark lies farther inboard, so going down the axis comes outboard, toward the rim line.`,
        },
        {
          id: 'from-the-upper',
          confuses: 'upper mark',
          value: (item, earlier) => upperIn(item) - step(earlier, 0),
          text: () =>
            phrase`That goes on from the upper mark. From there the axis has the whole height to go; the step that you have is from the lower pivot down.`,
        },
        {
          id: 'twice',
          confuses: 'both halves',
          value: (item, earlier) => lowerIn(item) - 2 * step(earlier, 0),
          text: () =>
            phrase`That takes the step off twice, as if both halves of something had to be counted. There is one axis and one step below its lower pivot.`,
        },
        {
          id: 'lower-mark',
          confuses: 'lower mark',
          value: lowerIn,
          text: () =>
            phrase`That is the lower mark itself, as if the axis went straight down from the ball joint. The plumb line does; the axis goes on leaning to the floor.`,
        },
      ],
      solution: ({ lowerIn_mm }, earlier, value) =>
        phrase`From the lower mark outboard: ${mm(lowerIn_mm)} − ${term(rounded(step(earlier, 0), 'mm', 1))} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius',
      value: (item, earlier) => step(earlier, 1) - middle(item),
      sum: 'rounded',
      hint: () =>
        phrase`Both places are counted inboard of the rim line. Is the axis farther inboard than the middle of the print?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => middle(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. Both are counted inboard of the rim line: the larger one lies farther inboard.`,
        },
        {
          id: 'added',
          confuses: 'adding the middle',
          value: (item, earlier) => step(earlier, 1) + middle(item),
          text: () =>
            phrase`That comes from adding the middle of the print. Both places are counted from the same line, and the way from one to the other is their difference.`,
        },
        {
          id: 'from-the-pivot',
          confuses: 'lower pivot for the axis',
          value: (item) => lowerIn(item) - middle(item),
          text: () =>
            phrase`That takes the lower pivot for the axis at the floor. It would be right for an upright axis. This one leans, and has gone on outboard by what you worked out first.`,
        },
        {
          id: 'rim-line',
          confuses: 'rim line for the middle',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That takes the rim line for the middle of the print. The line is only where the tape begins; the scrub radius is counted from the contact centre.`,
        },
      ],
      solution: ({ middle_mm }, earlier, value) =>
        phrase`Axis less middle of the print: ${rounded(step(earlier, 1), 'mm', 1)} − ${mm(middle_mm)} = ${rounded(value, 'mm', 1)}. The axis meets the road ${sign(value, QUANTITIES.scrubRadius)} of the contact centre.`,
    },
  ],
};
