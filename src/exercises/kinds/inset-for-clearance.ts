import { changed, NO_CHANGE } from '#core/change.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { edgesMoved } from '../paper/wheel.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { movedScrub } from '../pictures/corner-pictures.ts';
import type { Rim } from '../pictures/part-pictures.ts';
import { rimsAtStrut, toldMark, wrongPlace } from '../pictures/wheel-pictures.ts';

interface Item {
  readonly oldWidth_in: number;
  readonly newWidth_in: number;
  readonly inset_mm: number;
  readonly clearance_mm: number;
  readonly wanted_mm: number;
  readonly scrub_mm: number;
}

const gain = ({ oldWidth_in, newWidth_in }: Item): number => si(newWidth_in - oldWidth_in, 'in');
const inset = ({ inset_mm }: Item): number => si(inset_mm, 'mm');
const clearance = ({ clearance_mm }: Item): number => si(clearance_mm, 'mm');
const wanted = ({ wanted_mm }: Item): number => si(wanted_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
/** The inner edge comes inboard by half of the gain; what may not be taken from the clearance the wheel has to move out. */
const move = kept(
  (item: Item): number =>
    wanted(item) -
    clearance(item) -
    edgesMoved(0, si(item.oldWidth_in, 'in'), si(item.newWidth_in, 'in')).inner,
);

const newRim = (item: Item, inset_mm = item.inset_mm - 1000 * move(item)): Rim => ({
  middle_mm: -inset_mm,
  width_mm: 1000 * si(item.newWidth_in, 'in'),
});
const rims = (item: Item, wheel = newRim(item)) =>
  rimsAtStrut(
    { width_in: item.oldWidth_in, inset_mm: item.inset_mm, clearance_mm: item.clearance_mm },
    wheel,
  );

/** From the clearance that has to stay, back to the inset of a wider wheel and on to the scrub radius it costs. */
export const insetForClearance: Kind<Item> = {
  id: 'inset-for-clearance',
  version: 1,
  title: 'Which inset fits?',
  lesson: 'spacers-and-inset',
  level: 3,
  draw: (random) => {
    const oldWidth_in = random.grid(5.5, 7.5, 0.5);
    const clearance_mm = random.integer(6, 18);
    return {
      oldWidth_in,
      newWidth_in: oldWidth_in + random.grid(1, 2.5, 0.5),
      inset_mm: random.integer(32, 55),
      clearance_mm,
      wanted_mm: clearance_mm - random.integer(1, 5),
      scrub_mm: random.pick([-1, 1]) * random.integer(3, 20),
    };
  },
  sound: (item) => item.wanted_mm >= 4 && move(item) >= 0.005,
  pattern: ({ scrub_mm }) => (scrub_mm > 0 ? 'from inboard' : 'from outboard'),
  question: ({ oldWidth_in, newWidth_in, inset_mm, clearance_mm, wanted_mm, scrub_mm }) =>
    phrase`A customer wants rims ${given(newWidth_in, 'in')} wide in place of the ${given(oldWidth_in, 'in')} ones. Those have ${mm(inset_mm)} inset and clear the strut by ${mm(clearance_mm)}; the shop will not go below ${mm(wanted_mm)}. The scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}, and the tyres keep their diameter. Which is the largest inset that the new rims may have, and what does it do to the scrub radius?`,
  picture: (item) => rims(item).given,
  solved: (item) => ({
    ...rims(item).after,
    measures: [
      toldMark('move', 'movement', move(item)),
      toldMark('inset', 'inset', inset(item) - move(item)),
      { of: 'clearance', says: mm(item.wanted_mm).figure },
    ],
  }),
  wrong: (item, road) => {
    switch (road.part) {
      case 'move':
        return wrongPlace(
          { ...rims(item).after, measures: [{ of: 'move', says: 'movement' }] },
          {
            road,
            at_mm: (value) => 1000 * value - item.inset_mm,
            from_mm: -item.inset_mm,
            rim: newRim(item),
          },
        );
      case 'inset':
        return wrongPlace(
          {
            ...rims(item, newRim(item, 1000 * road.answer)).after,
            measures: [{ of: 'inset', says: 'inset' }],
          },
          { road, at_mm: (value) => -1000 * value, from_mm: 0, rim: newRim(item) },
        );
      default:
        return movedScrub(scrub(item), road);
    }
  },
  parts: [
    {
      id: 'move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the wheel’s middle that this takes',
      value: move,
      sum: 'rounded',
      hint: () =>
        phrase`Begin with the same inset: by how much does the inner edge come nearer to the strut? A part of the clearance may be used up; the rest the wheel has to move.`,
      slips: [
        {
          id: 'clearance-unused',
          confuses: 'clearance that may be used up',
          value: (item) => gain(item) / 2,
          text: () =>
            phrase`That moves the wheel by all that the inner edge comes inboard. It would keep the clearance as it was; here some of it is clearance that may be used up.`,
        },
        {
          id: 'whole-gain',
          confuses: 'whole width gained',
          value: (item) => gain(item) - clearance(item) + wanted(item),
          text: () =>
            phrase`That lets the inner edge come inboard by the whole width gained. Inset is counted from the middle, so the inner side takes half of it.`,
        },
        {
          id: 'clearance-added',
          confuses: 'difference of the clearances',
          value: (item) => gain(item) / 2 + clearance(item) - wanted(item),
          text: () =>
            phrase`That adds the difference of the clearances. It would be right if the shop wanted more room than there was. It is content with less, so the wheel has less far to go.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => -move(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places: that would take the rim into the strut. The strut stands inboard, so the wheel has to go outboard.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Half of the gain, less what may be used up: ${rounded(gain(item) / 2, 'mm', 2)} − ${mm(item.clearance_mm)} + ${mm(item.wanted_mm)} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    },
    {
      id: 'inset',
      quantity: OWN_QUANTITIES.inset,
      unit: 'mm',
      decimals: 1,
      label: 'Largest inset of the new rims',
      value: (item, earlier) => inset(item) - step(earlier, 0),
      sum: 'rounded',
      hint: () => phrase`A wheel that is to stand farther outboard: more inset, or less?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of inset',
          value: (item, earlier) => inset(item) + step(earlier, 0),
          text: () =>
            phrase`That has the direction of inset turned round, as if it were a spacer. More inset draws the wheel inboard, toward the strut: take the movement away.`,
        },
        {
          id: 'gain-besides',
          confuses: 'width counted again',
          value: (item, earlier) => inset(item) - step(earlier, 0) - gain(item) / 2,
          text: () =>
            phrase`That has the width counted again. Half of the gain is in the movement already; the inset takes the movement and nothing more.`,
        },
        {
          id: 'move-alone',
          confuses: 'movement for the inset',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That takes the movement for the inset. It would be right coming from a wheel of no inset on the other side. Count from the inset that the old rims have.`,
        },
        {
          id: 'halved',
          confuses: 'half of the movement',
          value: (item, earlier) => inset(item) - step(earlier, 0) / 2,
          text: () =>
            phrase`That takes half of the movement. The edges of a rim share its width between them; an inset is counted from the middle, and goes with all of the movement.`,
        },
      ],
      solution: ({ inset_mm }, earlier, value) =>
        phrase`Farther outboard is less inset: ${mm(inset_mm)} − ${rounded(step(earlier, 0), 'mm', 1)} = ${rounded(value, 'mm', 1)}. Wheels come in whole millimetres: take the next smaller one that is to be had.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius on the new wheels',
      value: (item, earlier) =>
        measure(
          changed(cornerAtRoad({ scrubRadius: scrub(item) }), {
            ...NO_CHANGE,
            inset: step(earlier, 1) - inset(item),
          }),
        ).scrubRadius,
      sum: 'rounded',
      hint: () =>
        phrase`The axis stays. The contact centre goes with the middle of the wheel, whatever the width.`,
      slips: [
        {
          id: 'unchanged',
          confuses: 'old wheels',
          value: scrub,
          text: () =>
            phrase`That is the scrub radius on the old wheels. It fits and it clears, but the middle of the wheel has moved outboard and taken the contact centre along.`,
        },
        {
          id: 'wrong-way',
          confuses: 'movement of the wheel',
          value: (item, earlier) => scrub(item) - (inset(item) - step(earlier, 1)),
          text: () =>
            phrase`That counts the movement of the wheel the wrong way. Less inset takes the contact centre outboard, farther from an axis that meets the road inboard of it.`,
        },
        {
          id: 'half-the-width',
          confuses: 'outer edge',
          value: (item, earlier) => scrub(item) + inset(item) - step(earlier, 1) + gain(item) / 2,
          text: () =>
            phrase`That is how far the outer edge has gone. The contact centre lies below the middle of the wheel, and the width has no part in it.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the start',
          value: (item, earlier) => inset(item) - step(earlier, 1) - scrub(item),
          text: () =>
            phrase`That has the side of the start turned round. Inboard counts as positive and outboard as negative: put that sign to the first scrub radius, then add the movement.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Old inset less new goes into the scrub radius: ${term(mm(item.scrub_mm))} + ${mm(item.inset_mm)} − ${rounded(step(earlier, 1), 'mm', 1)} = ${rounded(value, 'mm', 1)}. That it clears was only half of the question.`,
    },
  ],
};
