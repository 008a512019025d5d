import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { setting } from '../forms/setting.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtCentre } from '../paper/corner.ts';
import { computed, deg, directed, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import type { CornerPicture } from '../pictures/picture.ts';

interface Item {
  readonly spindle_mm: number;
  readonly inclination_deg: number;
  readonly radius_mm: number;
  readonly wanted_mm: number;
}

const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const wanted = ({ wanted_mm }: Item): number => si(wanted_mm, 'mm');
const lean = (item: Item): number => spindle(item) - scrub(item);
const scrub = kept((item: Item): number => measure(corner(item)).scrubRadius);

const corner = kept((item: Item): Corner =>
  cornerAtCentre({
    spindleOffset: spindle(item),
    inclination: si(item.inclination_deg, 'deg'),
    loadedRadius: si(item.radius_mm, 'mm'),
  }),
);

/** The corner with its wheel moved along the hub, as a spacer or another inset moves it. */
const movedBy = (item: Item, move: number): Corner =>
  changed(corner(item), { ...NO_CHANGE, spacer: move });

const picture = (item: Item, move: number): CornerPicture => ({
  scene: 'corner',
  view: 'front',
  corner: movedBy(item, move),
  ...(move !== 0 && { before: corner(item) }),
  points: [
    { at: 'axis', says: 'steering axis' },
    { at: 'contact', says: 'contact centre' },
  ],
});

/** The wheel goes in or out on its hub until the axis meets the road where it is wanted. */
export const setWheelForScrub: Kind<Item> = {
  id: 'set-wheel-for-scrub',
  version: 1,
  title: 'Move the wheel to a scrub radius',
  lesson: 'at-the-road',
  level: 3,
  draw: (random) => ({
    spindle_mm: random.integer(48, 96),
    inclination_deg: 0.5 * random.integer(18, 32),
    radius_mm: random.integer(270, 350),
    wanted_mm: random.pick([-1, 1]) * random.integer(4, 24),
  }),
  sound: (item) =>
    Math.abs(wanted(item) - scrub(item)) >= 0.006 && Math.abs(wanted(item) - scrub(item)) <= 0.055,
  pattern: ({ wanted_mm }) => (wanted_mm > 0 ? 'to inboard' : 'to outboard'),
  question: ({ spindle_mm, inclination_deg, radius_mm, wanted_mm }) =>
    phrase`In the drawing a left front wheel is seen from the front. The axis passes ${mm(spindle_mm)} inboard of the wheel centre and leans ${deg(inclination_deg)} inboard; the upright wheel has a loaded radius of ${mm(radius_mm)}. Move the wheel on its hub until the scrub radius is ${directed(wanted_mm, 'mm', QUANTITIES.scrubRadius)}.`,
  picture: (item) => picture(item, 0),
  solved: (item) => picture(item, wanted(item) - scrub(item)),
  wrong: (item, road) =>
    road.part === 'move'
      ? seenBeside({ of: 'scrubRadius', says: 'scrub radius', view: 'front' }, road, (move) =>
          movedBy(item, move),
        )
      : seenBeside({ of: 'scrubRadius', says: 'scrub radius', view: 'front' }, road, (value) =>
          cornerAtCentre({
            spindleOffset: spindle(item) + value - scrub(item),
            inclination: si(item.inclination_deg, 'deg'),
            loadedRadius: si(item.radius_mm, 'mm'),
          }),
        ),
  parts: [
    {
      id: 'scrub-now',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius as it stands',
      value: scrub,
      sum: 'rounded',
      hint: () =>
        phrase`On its way down from the wheel centre to the road the axis comes out toward the wheel. By how much, over a loaded radius?`,
      slips: [
        {
          id: 'lean-added',
          confuses: 'way up the axis',
          value: (item) => spindle(item) + lean(item),
          text: () =>
            phrase`That adds what the axis gains, as on the way up the axis, from the road to the wheel centre. Here the way goes down: the axis comes nearer to the wheel, so take it away.`,
        },
        {
          id: 'lean-alone',
          confuses: 'lean between the two heights',
          value: lean,
          text: () =>
            phrase`That is the lean between the two heights. The axis started its way down already inboard of the wheel: take the lean from the spindle offset.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => -scrub(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. Compare spindle offset and lean: if the lean is larger, the axis has crossed the middle of the wheel on its way down.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => spindle(item) - 2 * lean(item),
          text: () =>
            phrase`That goes down by a whole diameter. From the wheel centre to the road it is one loaded radius.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Down a loaded radius the axis comes out by ${mm(item.radius_mm)} · tan ${deg(item.inclination_deg)} = ${computed(lean(item), 'length')}. That leaves ${mm(item.spindle_mm)} − ${computed(lean(item), 'length')} = ${rounded(value, 'mm', 1)}, ${sign(value, QUANTITIES.scrubRadius)}.`,
    },
    setting<Item>({
      id: 'move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      label: 'Movement of the wheel',
      form: {
        scale: () => ({ least: -80, most: 80, step: 0.5, start: 0 }),
        aim: {
          quantity: QUANTITIES.scrubRadius,
          unit: 'mm',
          decimals: 1,
          near: si(1, 'mm'),
        },
        // From the scrub radius that the learner found, the wheel has to make up for what is missing.
        target: (item, earlier) => wanted(item) + scrub(item) - step(earlier, 0),
        reached: (item, move) => measure(movedBy(item, move)).scrubRadius,
        picture,
      },
      hint: () =>
        phrase`The axis stays. A wheel that goes outboard takes the contact centre along, and the scrub radius grows by as much.`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'axis for the wheel',
          value: (item, earlier) => step(earlier, 0) - wanted(item),
          text: () =>
            phrase`The way is as long as it has to be, but it would be right for the axis: this takes the axis for the wheel. The axis stays here, and it is the wheel that goes.`,
        },
        {
          id: 'whole-scrub',
          confuses: 'scrub radius that is wanted',
          value: wanted,
          text: () =>
            phrase`That moves the wheel by the scrub radius that is wanted. It would be right if there were none yet. Take what is there from what is wanted.`,
        },
        {
          id: 'added',
          confuses: 'sign of the start',
          value: (item, earlier) => wanted(item) + step(earlier, 0),
          text: () =>
            phrase`That has the sign of the start turned round, so what is there has been counted twice over. The movement is what is wanted less what is there, each with its sign.`,
        },
        {
          id: 'both-wheels',
          confuses: 'track',
          value: (item, earlier) => 2 * (wanted(item) - step(earlier, 0)),
          text: () =>
            phrase`That moves the wheel twice as far as it has to go: the track changes by so much when both wheels move. Each wheel has its own scrub radius.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`What is wanted less what is there: ${term(mm(item.wanted_mm))} − ${term(computed(step(earlier, 0), 'length'))} = ${rounded(value, 'mm', 1)}. The wheel goes ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    }),
  ],
};
