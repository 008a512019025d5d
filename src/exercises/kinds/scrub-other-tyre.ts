import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { between, roughLean_mm } from '../paper/plausible.ts';
import { computed, deg, directed, mm, phrase, si, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { axisFromRoad } from '../pictures/given-measures.ts';

interface Item {
  readonly scrub_mm: number;
  readonly radius_mm: number;
  readonly newRadius_mm: number;
  readonly inclination_deg: number;
}

const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const newRadius = ({ newRadius_mm }: Item): number => si(newRadius_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const tangent = (item: Item): number => Math.tan(inclination(item));

const onOldTyre = (item: Item, scrubRadius: number): Corner =>
  cornerAtRoad({ scrubRadius, inclination: inclination(item), loadedRadius: radius(item) });

/** The same axis over the other tyre; the wheel centre stays in the drawing and the road moves. */
const onNewTyre = (item: Item, scrubRadius: number): Corner =>
  changed(onOldTyre(item, scrubRadius), {
    ...NO_CHANGE,
    loadedRadius: newRadius(item) - radius(item),
  });

/** Other tyres leave the axis at the wheel centre alone and move the road. */
export const scrubOtherTyre: Kind<Item> = {
  id: 'scrub-other-tyre',
  version: 1,
  title: 'Tyres of another size',
  lesson: 'at-the-wheel-centre',
  level: 2,
  draw: (random) => {
    const radius_mm = random.integer(270, 350);
    return {
      scrub_mm: random.integer(-25, 50),
      radius_mm,
      newRadius_mm: radius_mm + random.pick([-1, 1]) * random.integer(8, 35),
      inclination_deg: random.grid(8, 16, 0.5),
    };
  },
  // The scrub radius stays on its side, well clear of nought.
  sound: ({ scrub_mm, radius_mm, newRadius_mm, inclination_deg }) =>
    between(scrub_mm + roughLean_mm(radius_mm, inclination_deg), 25, 115) &&
    scrub_mm * (scrub_mm - 0.35 * (newRadius_mm - radius_mm)) > 0 &&
    Math.abs(scrub_mm) >= 3,
  pattern: ({ scrub_mm, radius_mm, newRadius_mm }) =>
    `${scrub_mm > 0 ? 'inboard' : 'outboard'} ${newRadius_mm > radius_mm ? 'larger' : 'smaller'}`,
  question: ({ scrub_mm, radius_mm, newRadius_mm, inclination_deg }) =>
    phrase`An upright wheel has a loaded radius of ${mm(radius_mm)}. The scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}, the inclination ${deg(inclination_deg)}, the top of the axis leaning inboard. The wheel gets a tyre with a loaded radius of ${mm(newRadius_mm)}; rim and inset stay.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: onOldTyre(item, scrub(item)),
      axis: 'low',
      measures: axisFromRoad(item),
    }),
    end: (item) => onNewTyre(item, scrub(item)),
    before: (item) => onOldTyre(item, scrub(item)),
    parts: {
      'spindle-offset': {
        of: 'spindleOffset',
        says: 'spindle offset',
        to: (item, value) => onOldTyre(item, value - radius(item) * tangent(item)),
      },
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value) =>
          onNewTyre(item, value - (radius(item) - newRadius(item)) * tangent(item)),
        before: (item, earlier) => onOldTyre(item, step(earlier, 0) - radius(item) * tangent(item)),
      },
    },
  }),
  parts: [
    {
      id: 'spindle-offset',
      quantity: QUANTITIES.spindleOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Spindle offset, on either tyre',
      value: (item) =>
        measure(
          cornerAtRoad({
            scrubRadius: scrub(item),
            inclination: inclination(item),
            loadedRadius: radius(item),
          }),
        ).spindleOffset,
      sum: 'rounded',
      hint: () =>
        phrase`A tyre moves neither the wheel centre nor the axis. On the old tyre you know where the axis meets the road: go up from there.`,
      slips: [
        {
          id: 'new-radius',
          confuses: 'new loaded radius',
          value: (item) => scrub(item) + newRadius(item) * tangent(item),
          text: () =>
            phrase`That goes up by the new loaded radius, but the scrub radius given belongs to the old tyre. Take both from the same tyre.`,
        },
        {
          id: 'lean-taken-away',
          confuses: 'lean of the axis',
          value: (item) => scrub(item) - radius(item) * tangent(item),
          text: () =>
            phrase`That takes the lean of the axis away, as on the way down from the wheel centre. On the way up the axis leans farther inboard: add it.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the scrub radius',
          value: (item) => radius(item) * tangent(item) - scrub(item),
          text: () =>
            phrase`That has the side of the scrub radius turned round. Inboard counts as positive and outboard as negative: put that sign to it, then add the lean.`,
        },
        {
          id: 'scrub-left-out',
          confuses: 'scrub radius of nought',
          value: (item) => radius(item) * tangent(item),
          text: () =>
            phrase`That is the lean alone, as on a car with a scrub radius of nought. Begin from where the axis meets the road.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Up from the road on the old tyre: ${mm(item.scrub_mm)} + ${mm(item.radius_mm)} · tan ${deg(item.inclination_deg)} = ${computed(value, 'length')}, inboard. The new tyre does not change it.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius on the new tyre',
      value: (item, earlier) =>
        measure(
          cornerAtCentre({
            spindleOffset: step(earlier, 0),
            inclination: inclination(item),
            loadedRadius: newRadius(item),
          }),
        ).scrubRadius,
      sum: 'rounded',
      hint: () =>
        phrase`From the wheel centre down to the road, by the loaded radius that is on the car now.`,
      slips: [
        {
          id: 'unchanged',
          confuses: 'old tyre',
          value: scrub,
          text: () =>
            phrase`That is the scrub radius on the old tyre. It would stay if the axis stood upright. This one leans, and meets the road elsewhere when the road is nearer to the wheel centre or farther from it.`,
        },
        {
          id: 'wrong-way',
          confuses: 'nearer and farther',
          value: (item) => scrub(item) + (newRadius(item) - radius(item)) * tangent(item),
          text: () =>
            phrase`That changes it the wrong way: nearer and farther have changed places. The farther the road is below the wheel centre, the farther outboard the axis meets it.`,
        },
        {
          id: 'whole-difference',
          confuses: 'difference of the loaded radii',
          value: (item) => scrub(item) - (newRadius(item) - radius(item)),
          text: () =>
            phrase`That takes the whole difference of the loaded radii, as if the axis leaned by half a right angle. It leans less: only the tangent’s share of the difference goes sideways.`,
        },
        {
          id: 'lean-added',
          confuses: 'lean of the axis',
          value: (item, earlier) => step(earlier, 0) + newRadius(item) * tangent(item),
          text: () =>
            phrase`That adds the lean of the axis to the spindle offset, as on the way up. From the wheel centre it goes down to the road, and the axis comes outboard: take it away.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Down to the road on the new tyre: ${term(computed(step(earlier, 0), 'length'))} − ${mm(item.newRadius_mm)} · tan ${deg(item.inclination_deg)} = ${computed(value, 'length')}. A ${item.newRadius_mm > item.radius_mm ? 'larger' : 'smaller'} tyre has moved the scrub radius toward the ${item.newRadius_mm > item.radius_mm ? 'outboard' : 'inboard'} side.`,
    },
  ],
};
