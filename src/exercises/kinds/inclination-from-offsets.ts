import type { Corner } from '#core/corner.ts';
import { inclinationOf } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerAtRoad } from '../paper/corner.ts';
import { bare, computed, directed, mm, phrase, rounded, si, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { angleSlips } from '../slips/angle-slips.ts';

interface Item {
  readonly spindle_mm: number;
  readonly scrub_mm: number;
  readonly radius_mm: number;
}

const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');

/** The corner whose axis goes inboard by so much between road and wheel centre. */
const leaning = (item: Item, lean = spindle(item) - scrub(item)): Corner =>
  cornerAtRoad({
    scrubRadius: scrub(item),
    inclination: Math.atan(lean / radius(item)),
    loadedRadius: radius(item),
  });

/** From the offsets at two heights back to the lean of the axis. */
export const inclinationFromOffsets: Kind<Item> = {
  id: 'inclination-from-offsets',
  version: 1,
  title: 'Two offsets, one lean',
  lesson: 'at-the-wheel-centre',
  level: 3,
  draw: (random) => ({
    spindle_mm: random.integer(30, 110),
    scrub_mm: random.integer(-25, 50),
    radius_mm: random.integer(270, 360),
  }),
  sound: ({ spindle_mm, scrub_mm, radius_mm }) => {
    const slope = (spindle_mm - scrub_mm) / radius_mm;
    return Math.abs(scrub_mm) >= 3 && slope > 0.11 && slope < 0.3;
  },
  pattern: ({ scrub_mm }) => (scrub_mm > 0 ? 'scrub inboard' : 'scrub outboard'),
  question: ({ spindle_mm, scrub_mm, radius_mm }) =>
    phrase`The inclination of a car cannot be read, but its offsets have been measured: spindle offset ${directed(spindle_mm, 'mm', QUANTITIES.spindleOffset)}, scrub radius ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}. The wheel stands upright on a loaded radius of ${mm(radius_mm)}.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: leaning(item),
      axis: 'none',
      measures: [
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'spindleOffset', says: mm(item.spindle_mm).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    end: (item) => leaning(item),
    parts: {
      lean: { of: 'lean', says: 'lean', to: leaning },
      inclination: {
        of: 'inclination',
        says: 'inclination',
        to: (item, value) => leaning(item, radius(item) * Math.tan(value)),
      },
    },
  }),
  parts: [
    {
      id: 'lean',
      quantity: OWN_QUANTITIES.leanToCentre,
      unit: 'mm',
      decimals: 0,
      label: 'How far the axis leans between the road and the wheel centre',
      value: (item) => spindle(item) - scrub(item),
      sum: 'exact',
      hint: () =>
        phrase`Mark the axis at both heights, each on its side of the wheel. How far has it gone inboard from the road up to the wheel centre?`,
      slips: [
        {
          id: 'side-of-the-scrub-radius',
          confuses: 'side of the scrub radius',
          value: (item) => spindle(item) + scrub(item),
          text: ({ scrub_mm }) =>
            scrub_mm > 0
              ? phrase`That adds the two offsets. It would be right if the axis met the road outboard of the contact centre. The side of the scrub radius is inboard, like that of the spindle offset, so take the difference.`
              : phrase`That takes one size from the other. It would be right if the axis met the road inboard of the contact centre. The side of the scrub radius is outboard, so the wheel’s plane lies between the two and the sizes add up.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => scrub(item) - spindle(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places: that has the axis lean outboard as it climbs. Go from the road up.`,
        },
        {
          id: 'scrub-left-out',
          confuses: 'scrub radius of nought',
          value: spindle,
          text: () =>
            phrase`That is the spindle offset alone. It would be the whole lean on a car with a scrub radius of nought. Here the axis starts beside the contact centre.`,
        },
        {
          id: 'mean',
          confuses: 'mean of the two offsets',
          value: (item) => (spindle(item) + scrub(item)) / 2,
          text: () =>
            phrase`That is the mean of the two offsets: where the axis passes halfway up. The lean is what lies between them.`,
        },
      ],
      solution: ({ spindle_mm, scrub_mm }, _earlier, value) =>
        phrase`Inboard counts as positive: ${mm(spindle_mm)} − ${term(mm(scrub_mm))} = ${rounded(value, 'mm', 0)}, inboard on the way up.`,
    },
    {
      id: 'inclination',
      quantity: QUANTITIES.inclination,
      unit: 'deg',
      decimals: 1,
      label: 'Steering-axis inclination',
      value: (item, earlier) =>
        inclinationOf(axisThrough({ out: step(earlier, 0) }, { up: radius(item) }), 'left'),
      hint: () =>
        phrase`Sketch the triangle: the lean across, the height climbed, and the axis as its slanted side. How high is the wheel centre above the road?`,
      slips: [
        ...angleSlips<Item>({
          angle: 'inclination',
          across: 'the lean',
          up: 'the loaded radius',
          wrongWay: 'outboard',
          tangent: (item, earlier) => step(earlier, 0) / radius(item),
        }),
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item, earlier) => Math.atan(step(earlier, 0) / (2 * radius(item))),
          text: () =>
            phrase`That divides by the diameter, as if the upper offset had been measured at the top of the wheel. It was measured at the wheel centre, one loaded radius up.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'mm', 0)} ÷ ${mm(item.radius_mm)} = ${bare(step(earlier, 0) / radius(item), 4)}, and the angle with that tangent is ${computed(value, 'angle')}: the top of the axis leans inboard.`,
    },
  ],
};
