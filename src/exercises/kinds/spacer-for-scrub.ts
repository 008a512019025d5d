import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { directed, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  readonly scrub_mm: number;
  readonly oldInset_mm: number;
  readonly newInset_mm: number;
  readonly wanted_mm: number;
}

const before = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const oldInset = ({ oldInset_mm }: Item): number => si(oldInset_mm, 'mm');
const newInset = ({ newInset_mm }: Item): number => si(newInset_mm, 'mm');
const wanted = ({ wanted_mm }: Item): number => si(wanted_mm, 'mm');

/** The corner with its wheel moved outboard by so much. */
const moved = (item: Item, move: number): Corner =>
  changed(cornerAtRoad({ scrubRadius: before(item) }), { ...NO_CHANGE, spacer: move });

/** From a wanted scrub radius back to the spacer. */
export const spacerForScrub: Kind<Item> = {
  id: 'spacer-for-scrub',
  version: 1,
  title: 'A wanted scrub radius',
  lesson: 'at-the-road',
  level: 3,
  draw: (random) => {
    const scrub_mm = random.pick([-1, 1]) * random.integer(4, 24);
    const oldInset_mm = random.integer(20, 45);
    const more_mm = random.integer(6, 28);
    const spacer_mm = random.integer(5, 45);
    return {
      scrub_mm,
      oldInset_mm,
      newInset_mm: oldInset_mm + more_mm,
      wanted_mm: scrub_mm - more_mm + spacer_mm,
    };
  },
  sound: ({ wanted_mm }) => Math.abs(wanted_mm) >= 4 && Math.abs(wanted_mm) <= 25,
  pattern: ({ scrub_mm, wanted_mm }) =>
    `${scrub_mm > 0 ? 'inboard' : 'outboard'} to ${wanted_mm > 0 ? 'inboard' : 'outboard'}`,
  question: ({ scrub_mm, oldInset_mm, newInset_mm, wanted_mm }) =>
    phrase`On wheels of ${mm(oldInset_mm)} inset a car has a scrub radius of ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}. It is to run on wheels of ${mm(newInset_mm)} inset, with tyres of the same size, and to have a scrub radius of ${directed(wanted_mm, 'mm', QUANTITIES.scrubRadius)}. How thick a spacer does that take?`,
  ...cornerPictures<Item>({
    view: 'front',
    close: 'road',
    given: (item) => ({
      corner: moved(item, 0),
      measures: [{ of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure }],
    }),
    end: (item) => moved(item, wanted(item) - before(item)),
    before: (item) => moved(item, oldInset(item) - newInset(item)),
    parts: {
      'scrub-without': {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value) => moved(item, value - before(item)),
        before: (item) => moved(item, 0),
      },
      spacer: {
        of: 'wheelMove',
        says: 'spacer',
        to: (item, value, earlier) => moved(item, step(earlier, 0) - before(item) + value),
        before: (item, earlier) => moved(item, step(earlier, 0) - before(item)),
      },
    },
  }),
  parts: [
    {
      id: 'scrub-without',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius on the new wheels, without a spacer',
      value: (item) =>
        measure(
          changed(cornerAtRoad({ scrubRadius: before(item) }), {
            ...NO_CHANGE,
            inset: newInset(item) - oldInset(item),
          }),
        ).scrubRadius,
      sum: 'exact',
      hint: () => phrase`Wheels first, spacer later. Which way does a wheel of more inset go?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of inset',
          value: (item) => before(item) + newInset(item) - oldInset(item),
          text: () =>
            phrase`That has the direction of inset turned round. It would be right for wheels of less inset. More inset draws the wheel inboard, nearer to the axis or past it.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the start',
          value: (item) => -before(item) - newInset(item) + oldInset(item),
          text: () =>
            phrase`That has the side of the start turned round. Inboard counts as positive and outboard as negative: put that sign to the first scrub radius.`,
        },
        {
          id: 'both-wheels',
          confuses: 'track',
          value: (item) => before(item) - 2 * (newInset(item) - oldInset(item)),
          text: () =>
            phrase`That counts the change of inset twice, as for the track with its two wheels. A scrub radius belongs to one wheel.`,
        },
        {
          id: 'new-inset-alone',
          confuses: 'whole inset',
          value: (item) => before(item) - newInset(item),
          text: () =>
            phrase`That takes away the whole inset of the new wheel. It would be right if the old wheel had none. Only the change of inset moves the wheel.`,
        },
      ],
      solution: ({ scrub_mm, oldInset_mm, newInset_mm }, _earlier, value) =>
        phrase`The new wheels sit ${mm(newInset_mm)} − ${mm(oldInset_mm)} = ${mm(newInset_mm - oldInset_mm)} farther inboard: ${mm(scrub_mm)} − ${mm(newInset_mm - oldInset_mm)} = ${rounded(value, 'mm', 0)}, ${sign(value, QUANTITIES.scrubRadius)}.`,
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 0,
      label: 'Spacer',
      value: (item, earlier) => wanted(item) - step(earlier, 0),
      sum: 'exact',
      possible: (value) => value > 0,
      hint: () =>
        phrase`A spacer adds to the scrub radius. How much is missing from what you have to what you want, each with its sign?`,
      slips: [
        {
          id: 'old-wheels',
          confuses: 'scrub radius on the old wheels',
          value: (item) => wanted(item) - before(item),
          text: () =>
            phrase`That starts from the scrub radius on the old wheels. It would be right if they stayed on. The new wheels have moved it first.`,
        },
        {
          id: 'added',
          confuses: 'sign of the scrub radius',
          value: (item, earlier) => wanted(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the two. It would be right if the sign of the scrub radius on the new wheels were the other one. What is missing is the wanted value less the one you have.`,
        },
        {
          id: 'turned-round',
          confuses: 'wanted value',
          value: (item, earlier) => step(earlier, 0) - wanted(item),
          text: () =>
            phrase`That takes the wanted value from the one you have. It says by how much the wheel would have to come inboard; a spacer can only carry it outboard.`,
        },
        {
          id: 'inset-alone',
          confuses: 'change of inset',
          value: (item) => newInset(item) - oldInset(item),
          text: () =>
            phrase`That only makes up for the change of inset, and brings the old scrub radius back. Another one is wanted.`,
        },
      ],
      solution: ({ wanted_mm }, earlier, value) =>
        phrase`Wanted less what is there: ${mm(wanted_mm)} − ${term(rounded(step(earlier, 0), 'mm', 0))} = ${rounded(value, 'mm', 0)}. Whether such a spacer may go on at all is another question: bolts, centring, bearing and local rules have their say, and a licensed workshop has to look at it.`,
    },
  ],
};
