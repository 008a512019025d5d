import { changed, NO_CHANGE, type Change } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure, type Geometry } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { deg, directed, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { axisFromRoad } from '../pictures/given-measures.ts';

interface Item {
  readonly radius_mm: number;
  readonly newRadius_mm: number;
  readonly scrub_mm: number;
  readonly inclination_deg: number;
}

const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const newRadius = ({ newRadius_mm }: Item): number => si(newRadius_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const gain = (earlier: Earlier): Change => ({ ...NO_CHANGE, loadedRadius: step(earlier, 0) });

const onNewTyre = (item: Item, earlier: Earlier): Geometry =>
  measure(
    changed(
      cornerAtRoad({
        scrubRadius: scrub(item),
        inclination: inclination(item),
        loadedRadius: radius(item),
      }),
      gain(earlier),
    ),
  );

const onOldTyre = (item: Item, scrubRadius: number): Corner =>
  cornerAtRoad({ scrubRadius, inclination: inclination(item), loadedRadius: radius(item) });

const tallerBy = (item: Item): number => newRadius(item) - radius(item);

/** A tyre of another radius moves the road along an axis that leans; another inset can make up for it. */
export const tallerTyre: Kind<Item> = {
  id: 'taller-tyre',
  version: 1,
  title: 'The road moves away',
  lesson: 'tyres-and-camber',
  level: 3,
  draw: (random) => {
    const radius_mm = random.integer(275, 345);
    return {
      radius_mm,
      newRadius_mm: radius_mm + random.pick([-1, 1]) * 2 * random.integer(8, 20),
      scrub_mm: random.integer(-25, 45),
      inclination_deg: random.grid(9, 16, 0.5),
    };
  },
  sound: ({ scrub_mm, radius_mm, newRadius_mm }) =>
    Math.abs(scrub_mm) >= 3 && scrub_mm * (scrub_mm - 0.3 * (newRadius_mm - radius_mm)) > 0,
  pattern: ({ scrub_mm, radius_mm, newRadius_mm }) =>
    `${scrub_mm > 0 ? 'inboard' : 'outboard'} ${newRadius_mm > radius_mm ? 'taller' : 'lower'}`,
  question: (item) =>
    phrase`An upright wheel has a loaded radius of ${mm(item.radius_mm)}. The axis leans ${deg(item.inclination_deg)} inboard at its top, and the scrub radius is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. Other tyres on the same rims give a loaded radius of ${mm(item.newRadius_mm)}. Which change of inset brings the old scrub radius back?`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: onOldTyre(item, scrub(item)),
      axis: 'low',
      measures: axisFromRoad(item),
    }),
    end: (item) => changed(onOldTyre(item, scrub(item)), gain([tallerBy(item)])),
    before: (item) => onOldTyre(item, scrub(item)),
    parts: {
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value, earlier) =>
          changed(
            onOldTyre(item, value + step(earlier, 0) * Math.tan(inclination(item))),
            gain(earlier),
          ),
        before: (item) => onOldTyre(item, scrub(item)),
      },
      inset: {
        of: 'wheelMove',
        says: 'inset',
        to: (item, value, earlier) =>
          changed(onOldTyre(item, scrub(item)), { ...gain(earlier), inset: value }),
        before: (item) => onOldTyre(item, scrub(item)),
      },
    },
  }),
  parts: [
    {
      id: 'gain',
      quantity: OWN_QUANTITIES.radiusChange,
      unit: 'mm',
      decimals: 0,
      label: 'Change of the loaded radius',
      value: tallerBy,
      sum: 'exact',
      // Something of the radius has to be left.
      possible: (value) => value > -0.25,
      hint: () => phrase`New less old. The road lies a loaded radius below the wheel centre.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'larger and smaller',
          value: (item) => radius(item) - newRadius(item),
          text: () =>
            phrase`The size fits, but larger and smaller have changed places: that is old less new. A change is what is there now, less what was there before.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * (newRadius(item) - radius(item)),
          text: () =>
            phrase`That is about how the diameter changes. From the wheel centre down to the road it is one radius: count it once.`,
        },
        {
          id: 'halved',
          confuses: 'half of the change',
          value: (item) => (newRadius(item) - radius(item)) / 2,
          text: () =>
            phrase`That is half of the change, as from a diameter to a radius. The numbers given are radii already: nothing is left to halve.`,
        },
        {
          id: 'added',
          confuses: 'sum of the radii',
          value: (item) => newRadius(item) + radius(item),
          text: () =>
            phrase`That is the sum of the radii. It would be the distance between two wheels that stand one on the other. Only the difference lies between the old road and the new one.`,
        },
      ],
      solution: ({ radius_mm, newRadius_mm }, _earlier, value) =>
        phrase`${mm(newRadius_mm)} − ${mm(radius_mm)} = ${rounded(value, 'mm', 0)}: ${sign(value, OWN_QUANTITIES.radiusChange)}.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius on the new tyre',
      value: (item, earlier) => onNewTyre(item, earlier).scrubRadius,
      sum: 'rounded',
      hint: () =>
        phrase`Follow the axis down in the view from the front. With the road farther down, does it come more inboard or more outboard?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'nearer and farther',
          value: (item, earlier) => scrub(item) + step(earlier, 0) * Math.tan(inclination(item)),
          text: () =>
            phrase`That changes it the wrong way: nearer and farther have changed places. The farther the road is below the wheel centre, the farther outboard the axis meets it.`,
        },
        {
          id: 'unchanged',
          confuses: 'upright axis',
          value: scrub,
          text: () =>
            phrase`That is the old scrub radius, and with an upright axis it would stay. This one leans, and meets a road at another height in another place.`,
        },
        {
          id: 'radians',
          confuses: 'radians',
          value: (item, earlier) =>
            scrub(item) - step(earlier, 0) * Math.tan(fromSI(inclination(item), 'deg')),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the inclination here is in degrees. Set it to DEG and take the tangent again.`,
        },
        {
          id: 'whole-change',
          confuses: 'whole change of the radius',
          value: (item, earlier) => scrub(item) - step(earlier, 0),
          text: () =>
            phrase`That takes the whole change of the radius, as if the axis leaned by half a right angle. It leans less: only the tangent’s share of it goes sideways.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Farther down the axis is farther outboard: ${term(mm(item.scrub_mm))} − ${term(rounded(step(earlier, 0), 'mm', 0))} · tan ${deg(item.inclination_deg)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'inset',
      quantity: OWN_QUANTITIES.insetChange,
      unit: 'mm',
      decimals: 1,
      label: 'Change of inset that brings the old scrub radius back',
      value: (item, earlier) => step(earlier, 1) - scrub(item),
      sum: 'rounded',
      hint: () =>
        phrase`The scrub radius has gone one way. Which way does the contact centre have to follow, and is that more inset or less?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'more inset and less',
          value: (item, earlier) => scrub(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but more inset and less have changed places, as if a wheel of more inset stood farther outboard. It stands farther inboard, and makes the scrub radius smaller or more outboard.`,
        },
        {
          id: 'whole-gain',
          confuses: 'change of the loaded radius',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the change of the loaded radius. It goes up and down; the wheel has to move across, and only by what the scrub radius has changed.`,
        },
        {
          id: 'to-nought',
          confuses: 'to nought',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That would bring the scrub radius to nought. The car had one before, and that is the one to come back to: only the difference has to be made up.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item, earlier) => 2 * (step(earlier, 1) - scrub(item)),
          text: () =>
            phrase`That makes up for both wheels at once, as is done with the track. Each wheel has its own inset and its own scrub radius.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`New scrub radius less old: ${term(rounded(step(earlier, 1), 'mm', 1))} − ${term(mm(item.scrub_mm))} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.insetChange)}. The spindle offset then changes in turn: tyres and wheels together are a matter for the maker’s list.`,
    },
  ],
};
