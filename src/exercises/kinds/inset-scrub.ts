import { changed, NO_CHANGE, wheelShift } from '#core/change.ts';
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
}

const before = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const oldInset = ({ oldInset_mm }: Item): number => si(oldInset_mm, 'mm');
const newInset = ({ newInset_mm }: Item): number => si(newInset_mm, 'mm');

/** The corner with its wheel moved outboard by so much. */
const moved = (item: Item, move: number): Corner =>
  changed(cornerAtRoad({ scrubRadius: before(item) }), { ...NO_CHANGE, spacer: move });

/** Wheels of another inset move the contact centre the other way. */
export const insetScrub: Kind<Item> = {
  id: 'inset-scrub',
  version: 1,
  title: 'Wheels of another inset',
  lesson: 'at-the-road',
  level: 2,
  draw: (random) => {
    const oldInset_mm = random.integer(20, 50);
    return {
      scrub_mm: random.pick([-1, 1]) * random.integer(4, 25),
      oldInset_mm,
      newInset_mm: oldInset_mm + random.pick([-1, 1]) * random.integer(5, 30),
    };
  },
  sound: ({ newInset_mm }) => newInset_mm >= 8 && newInset_mm <= 60,
  pattern: ({ scrub_mm }) => (scrub_mm > 0 ? 'from inboard' : 'from outboard'),
  question: ({ scrub_mm, oldInset_mm, newInset_mm }) =>
    phrase`A car on wheels of ${mm(oldInset_mm)} inset has a scrub radius of ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}. It gets wheels of ${mm(newInset_mm)} inset, with tyres of the same size. The wheels stand upright.`,
  ...cornerPictures<Item>({
    view: 'front',
    close: 'road',
    given: (item) => ({
      corner: moved(item, 0),
      measures: [{ of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure }],
    }),
    end: (item) => moved(item, oldInset(item) - newInset(item)),
    before: (item) => moved(item, 0),
    parts: {
      'wheel-move': {
        of: 'wheelMove',
        says: 'movement',
        to: moved,
        before: (item) => moved(item, 0),
      },
      'scrub-after': {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value) => moved(item, value - before(item)),
        before: (item) => moved(item, 0),
      },
    },
  }),
  parts: [
    {
      id: 'wheel-move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      decimals: 0,
      label: 'Movement of the wheel',
      value: (item) => wheelShift({ spacer: 0, inset: newInset(item) - oldInset(item) }),
      sum: 'exact',
      hint: () =>
        phrase`Inset is how far the mounting face lies outboard of the wheel’s middle. The face stays on the hub: which way does the middle go?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of inset',
          value: (item) => newInset(item) - oldInset(item),
          text: () =>
            phrase`The size fits, but the direction of inset is turned round. It works against a spacer: more inset draws the wheel inboard, under the car.`,
        },
        {
          id: 'added',
          confuses: 'outset',
          value: (item) => oldInset(item) + newInset(item),
          text: () =>
            phrase`That adds the two insets. It would be right if one of the wheels had outset, with its mounting face inboard of the middle. Both have inset, so only the difference counts.`,
        },
        {
          id: 'new-inset-alone',
          confuses: 'whole inset',
          value: (item) => -newInset(item),
          text: () =>
            phrase`That takes the whole inset of the new wheel for the movement. It would be right if the old wheel had none. Count from the old inset.`,
        },
        {
          id: 'both-wheels',
          confuses: 'track',
          value: (item) => 2 * (oldInset(item) - newInset(item)),
          text: () =>
            phrase`That is how much the track changes, with both wheels together. One wheel moves by its own inset’s change.`,
        },
      ],
      solution: ({ oldInset_mm, newInset_mm }, _earlier, value) =>
        phrase`Old inset less new: ${mm(oldInset_mm)} − ${mm(newInset_mm)} = ${rounded(value, 'mm', 0)}. The wheel moves ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    },
    {
      id: 'scrub-after',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius on the new wheels',
      value: (item, earlier) =>
        measure(
          changed(cornerAtRoad({ scrubRadius: before(item) }), {
            ...NO_CHANGE,
            inset: -step(earlier, 0),
          }),
        ).scrubRadius,
      sum: 'exact',
      hint: () =>
        phrase`The axis stays where it is. When the contact centre moves outboard, does it come nearer to the axis or go farther from it?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'movement of the wheel',
          value: (item, earlier) => before(item) - step(earlier, 0),
          text: () =>
            phrase`That counts the movement of the wheel the wrong way. It would be right if the axis had moved so and the wheel stood still. A wheel farther out has the axis farther inboard of it.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the start',
          value: (item, earlier) => step(earlier, 0) - before(item),
          text: () =>
            phrase`That has the side of the start turned round. Inboard counts as positive and outboard as negative: put that sign to the first scrub radius, then add the movement.`,
        },
        {
          id: 'both-wheels',
          confuses: 'track',
          value: (item, earlier) => before(item) + 2 * step(earlier, 0),
          text: () =>
            phrase`That counts the movement twice, as for the track. The scrub radius belongs to one wheel, and that has moved once.`,
        },
        {
          id: 'new-inset-alone',
          confuses: 'whole inset',
          value: (item) => before(item) - newInset(item),
          text: () =>
            phrase`That takes the whole inset of the new wheel away. It would be right if the old wheel had none. The old inset is in the first scrub radius already.`,
        },
      ],
      solution: ({ scrub_mm }, earlier, value) =>
        phrase`The contact centre moves with the wheel and the axis stays: ${mm(scrub_mm)} + ${term(rounded(step(earlier, 0), 'mm', 0))} = ${rounded(value, 'mm', 0)}.`,
    },
  ],
};
