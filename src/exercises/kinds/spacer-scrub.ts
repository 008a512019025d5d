import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { mm, phrase, rounded, si, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  /** Out from the middle of the car: where the axis meets the road, and the contact centre. */
  readonly axis_mm: number;
  readonly contact_mm: number;
  readonly spacer_mm: number;
}

const before = ({ axis_mm, contact_mm }: Item): number => si(contact_mm - axis_mm, 'mm');
const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');

/** The corner whose wheel has moved out until the scrub radius is so large: the axis stays. */
const spaced = (from: number, scrubRadius: number): Corner =>
  changed(cornerAtRoad({ scrubRadius: from }), { ...NO_CHANGE, spacer: scrubRadius - from });

/** A spacer goes straight into the scrub radius. */
export const spacerScrub: Kind<Item> = {
  id: 'spacer-scrub',
  version: 1,
  title: 'A spacer behind the wheel',
  lesson: 'at-the-road',
  level: 1,
  draw: (random) => {
    const contact_mm = random.integer(690, 820);
    return {
      axis_mm: contact_mm + random.pick([-1, 1]) * random.integer(3, 30),
      contact_mm,
      spacer_mm: random.integer(5, 50),
    };
  },
  sound: () => true,
  pattern: ({ axis_mm, contact_mm }) => (axis_mm < contact_mm ? 'from inboard' : 'from outboard'),
  question: ({ axis_mm, contact_mm, spacer_mm }) =>
    phrase`Two crosses are chalked on the floor under an upright wheel. The one where the steering axis meets the road is ${mm(axis_mm)} from the middle of the car, the contact centre ${mm(contact_mm)}. Then a spacer ${mm(spacer_mm)} thick goes between hub and wheel.`,
  ...cornerPictures<Item>({
    view: 'front',
    close: 'road',
    given: (item) => ({
      corner: cornerAtRoad({ scrubRadius: before(item) }),
      axis: 'none',
      measures: [{ of: 'contactOut', says: mm(item.contact_mm).figure }],
    }),
    end: (item) => spaced(before(item), before(item) + spacer(item)),
    before: (item) => cornerAtRoad({ scrubRadius: before(item) }),
    parts: {
      'scrub-before': {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (_item, value) => cornerAtRoad({ scrubRadius: value }),
      },
      'scrub-after': {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (_item, value, earlier) => spaced(step(earlier, 0), value),
        before: (_item, earlier) => cornerAtRoad({ scrubRadius: step(earlier, 0) }),
      },
    },
  }),
  parts: [
    {
      id: 'scrub-before',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius without the spacer',
      value: (item) => measure(cornerAtRoad({ scrubRadius: before(item) })).scrubRadius,
      sum: 'exact',
      hint: () =>
        phrase`Which cross is nearer to the middle of the car? Inboard means that the axis is.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => -before(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The word says where the axis meets the road, seen from the contact centre, and not the other way about.`,
        },
        {
          id: 'spacer-counted',
          confuses: 'spacer',
          value: (item) => before(item) + spacer(item),
          text: () =>
            phrase`That has the spacer in it already. It will be right for the next line; here the car is asked for as it was.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item) => 2 * before(item),
          text: () =>
            phrase`That counts both wheels together, as is done with the track. A scrub radius belongs to one wheel.`,
        },
        {
          id: 'added',
          confuses: 'distances from the middle of the car',
          value: ({ axis_mm, contact_mm }) => si(axis_mm + contact_mm, 'mm'),
          text: () =>
            phrase`That adds the two distances from the middle of the car, as for points on different sides of it. Both crosses are under one wheel: only the difference lies between them.`,
        },
      ],
      solution: ({ axis_mm, contact_mm }, _earlier, value) =>
        phrase`From the axis out to the contact centre: ${mm(contact_mm)} − ${mm(axis_mm)} = ${rounded(value, 'mm', 0)}. ${value > 0 ? 'The axis is nearer to the middle of the car: inboard, positive.' : 'The axis is farther out than the contact centre: outboard, negative.'}`,
    },
    {
      id: 'scrub-after',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius with the spacer',
      value: (item, earlier) =>
        measure(
          changed(cornerAtRoad({ scrubRadius: step(earlier, 0) }), {
            ...NO_CHANGE,
            spacer: spacer(item),
          }),
        ).scrubRadius,
      sum: 'exact',
      hint: () =>
        phrase`The pivots stay, so the axis stays. Which way does the contact centre go, and how far?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'inset',
          value: (item, earlier) => step(earlier, 0) - spacer(item),
          text: () =>
            phrase`That takes the spacer away, as if the wheel had moved inboard. A wheel of more inset does that. A spacer carries the wheel outboard.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the start',
          value: (item, earlier) => spacer(item) - step(earlier, 0),
          text: () =>
            phrase`That has the side of the start turned round. Inboard counts as positive and outboard as negative: put that sign to the first scrub radius, then add the spacer.`,
        },
        {
          id: 'both-spacers',
          confuses: 'track',
          value: (item, earlier) => step(earlier, 0) + 2 * spacer(item),
          text: () =>
            phrase`That counts the spacer twice. The track grows by two spacers, one on each side; each wheel moves by its own.`,
        },
        {
          id: 'halved',
          confuses: 'half of the spacer',
          value: (item, earlier) => step(earlier, 0) + spacer(item) / 2,
          text: () =>
            phrase`That counts half of the spacer. A rim made wider on both sides moves its outer edge by half of the gain; a spacer moves the whole wheel, contact centre and all.`,
        },
      ],
      solution: ({ spacer_mm }, earlier, value) =>
        phrase`The axis stays and the contact centre moves outboard, so the spacer adds to the scrub radius: ${term(rounded(step(earlier, 0), 'mm', 0))} + ${mm(spacer_mm)} = ${rounded(value, 'mm', 0)}.`,
    },
  ],
};
