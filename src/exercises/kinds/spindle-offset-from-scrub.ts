import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { between, roughLean_mm } from '../paper/plausible.ts';
import { computed, deg, directed, mm, phrase, si, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { tangentSlips } from '../slips/tangent-slips.ts';

interface Item {
  readonly scrub_mm: number;
  readonly radius_mm: number;
  readonly inclination_deg: number;
}

const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');

const leaning = (item: Item, lean = inclination(item)): Corner =>
  cornerAtRoad({ scrubRadius: scrub(item), inclination: lean, loadedRadius: radius(item) });

/** From the road up to the wheel centre, along an axis that leans. */
export const spindleOffsetFromScrub: Kind<Item> = {
  id: 'spindle-offset-from-scrub',
  version: 1,
  title: 'One storey up',
  lesson: 'at-the-wheel-centre',
  level: 1,
  draw: (random) => ({
    scrub_mm: random.integer(-25, 50),
    radius_mm: random.integer(270, 360),
    inclination_deg: random.grid(7, 16, 0.5),
  }),
  sound: ({ scrub_mm, radius_mm, inclination_deg }) =>
    Math.abs(scrub_mm) >= 3 &&
    between(scrub_mm + roughLean_mm(radius_mm, inclination_deg), 25, 115),
  pattern: ({ scrub_mm }) => (scrub_mm > 0 ? 'inboard' : 'outboard'),
  question: ({ scrub_mm, radius_mm, inclination_deg }) =>
    phrase`A front wheel stands upright on a loaded radius of ${mm(radius_mm)}. The scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}, the inclination ${deg(inclination_deg)}, the top of the axis leaning inboard.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: leaning(item),
      axis: 'low',
      measures: [
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    end: (item) => leaning(item),
    parts: {
      lean: {
        of: 'lean',
        says: 'lean',
        to: (item, value) => leaning(item, Math.atan(value / radius(item))),
      },
      'spindle-offset': {
        of: 'spindleOffset',
        says: 'spindle offset',
        to: (item, value, earlier) =>
          cornerAtCentre({
            spindleOffset: value,
            inclination: Math.atan(step(earlier, 0) / radius(item)),
            loadedRadius: radius(item),
          }),
      },
    },
  }),
  parts: [
    {
      id: 'lean',
      quantity: OWN_QUANTITIES.leanToCentre,
      unit: 'mm',
      decimals: 1,
      label: 'How far the axis leans between the road and the wheel centre',
      value: (item) =>
        measure(cornerAtRoad({ inclination: inclination(item), loadedRadius: radius(item) }))
          .spindleOffset,
      hint: () =>
        phrase`From the road to the wheel centre the axis climbs by the loaded radius. How far does it lean inboard on the way?`,
      slips: [
        ...tangentSlips<Item>({
          angle: 'inclination',
          up: 'loaded radius',
          length: radius,
          size: inclination,
        }),
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * radius(item) * Math.tan(inclination(item)),
          text: () =>
            phrase`That uses the diameter, and so ends at the top of the wheel. The wheel centre is one loaded radius above the road.`,
        },
      ],
      solution: ({ radius_mm, inclination_deg }, _earlier, value) =>
        phrase`The loaded radius times the tangent of the inclination: ${mm(radius_mm)} · tan ${deg(inclination_deg)} = ${computed(value, 'length')}, inboard.`,
    },
    {
      id: 'spindle-offset',
      quantity: QUANTITIES.spindleOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Spindle offset',
      value: (item, earlier) => {
        const leaning = Math.atan(step(earlier, 0) / radius(item));
        return measure(
          cornerAtRoad({
            scrubRadius: scrub(item),
            inclination: leaning,
            loadedRadius: radius(item),
          }),
        ).spindleOffset;
      },
      sum: 'rounded',
      hint: () =>
        phrase`You know on which side the axis is at the road, and which way it leans as it climbs. How far from the wheel centre does it pass?`,
      slips: [
        {
          id: 'lean-taken-away',
          confuses: 'lean of the axis',
          value: (item, earlier) => scrub(item) - step(earlier, 0),
          text: () =>
            phrase`That takes the lean of the axis away. It would be right on the way down, from spindle offset to scrub radius. On the way up the axis leans farther inboard.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the scrub radius',
          value: (item, earlier) => step(earlier, 0) - scrub(item),
          text: () =>
            phrase`That has the side of the scrub radius turned round. Inboard counts as positive and outboard as negative: put that sign to it, then add the lean.`,
        },
        {
          id: 'scrub-left-out',
          confuses: 'scrub radius of nought',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the lean alone, as on a car with a scrub radius of nought. Here the axis does not meet the road at the contact centre: begin from where it does.`,
        },
        {
          id: 'top-of-the-wheel',
          confuses: 'top of the wheel',
          value: (item, earlier) => scrub(item) + 2 * step(earlier, 0),
          text: () =>
            phrase`That has the lean in it twice, which is the offset at the top of the wheel. The wheel centre is half as high.`,
        },
      ],
      solution: ({ scrub_mm }, earlier, value) =>
        phrase`${mm(scrub_mm)} + ${term(computed(step(earlier, 0), 'length'))} = ${computed(value, 'length')}: the axis passes inboard of the wheel centre.`,
    },
  ],
};
