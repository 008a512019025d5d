import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { cornerAtCentre } from '../paper/corner.ts';
import { between, roughLean_mm } from '../paper/plausible.ts';
import { computed, deg, directed, mm, phrase, rounded, si } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  readonly spindle_mm: number;
  readonly spacer_mm: number;
  readonly radius_mm: number;
  readonly inclination_deg: number;
}

const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
/** How far the axis leans between the road and the wheel centre. */
const lean = (item: Item): number => radius(item) * Math.tan(inclination(item));

const withOffset = (item: Item, spindleOffset: number): Corner =>
  cornerAtCentre({
    spindleOffset,
    inclination: inclination(item),
    loadedRadius: radius(item),
  });

/** The corner with its wheel so far out: the axis stays. */
const spaced = (item: Item, move: number): Corner =>
  changed(withOffset(item, spindle(item)), { ...NO_CHANGE, spacer: move });

/** A spacer at the wheel centre, and from there down to the road. */
export const spindleOffsetSpacer: Kind<Item> = {
  id: 'spindle-offset-spacer',
  version: 1,
  title: 'A spacer, one storey up',
  lesson: 'at-the-wheel-centre',
  level: 2,
  draw: (random) => ({
    spindle_mm: random.integer(35, 80),
    spacer_mm: random.integer(5, 40),
    radius_mm: random.integer(270, 360),
    inclination_deg: random.grid(8, 16, 0.5),
  }),
  sound: ({ spindle_mm, radius_mm, inclination_deg }) =>
    between(spindle_mm - roughLean_mm(radius_mm, inclination_deg), -25, 40),
  question: ({ spindle_mm, spacer_mm, radius_mm, inclination_deg }) =>
    phrase`A car has a spindle offset of ${directed(spindle_mm, 'mm', QUANTITIES.spindleOffset)} and an inclination of ${deg(inclination_deg)}, the top of the axis leaning inboard. The wheel stands upright on a loaded radius of ${mm(radius_mm)}. A spacer ${mm(spacer_mm)} thick goes between hub and wheel.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: withOffset(item, spindle(item)),
      axis: 'high',
      measures: [
        { of: 'spindleOffset', says: mm(item.spindle_mm).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    end: (item) => spaced(item, spacer(item)),
    before: (item) => withOffset(item, spindle(item)),
    parts: {
      'spindle-offset': {
        of: 'spindleOffset',
        says: 'spindle offset',
        to: (item, value) => spaced(item, value - spindle(item)),
        before: (item) => withOffset(item, spindle(item)),
        taken: { 'at-the-road': 'scrubRadius' },
      },
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value) => spaced(item, value + lean(item) - spindle(item)),
        before: (item) => withOffset(item, spindle(item)),
      },
    },
  }),
  parts: [
    {
      id: 'spindle-offset',
      quantity: QUANTITIES.spindleOffset,
      unit: 'mm',
      decimals: 0,
      label: 'Spindle offset with the spacer',
      value: (item) =>
        measure(
          changed(
            cornerAtCentre({ spindleOffset: spindle(item), inclination: inclination(item) }),
            { ...NO_CHANGE, spacer: spacer(item) },
          ),
        ).spindleOffset,
      sum: 'exact',
      hint: () => phrase`The axis stays. Which way does the wheel centre go, and by how much?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'inset',
          value: (item) => spindle(item) - spacer(item),
          text: () =>
            phrase`That moves the wheel centre inboard, as more inset does. A spacer carries it outboard, farther from the axis.`,
        },
        {
          id: 'both-spacers',
          confuses: 'track',
          value: (item) => spindle(item) + 2 * spacer(item),
          text: () =>
            phrase`That counts the spacer twice, as for the track with its two wheels. Each wheel moves by its own spacer.`,
        },
        {
          id: 'halved',
          confuses: 'half of the spacer',
          value: (item) => spindle(item) + spacer(item) / 2,
          text: () =>
            phrase`That counts half of the spacer. A wider rim moves its outer edge by half of the gain; a spacer moves the whole wheel.`,
        },
        {
          id: 'at-the-road',
          confuses: 'scrub radius',
          value: (item) => spindle(item) + spacer(item) - lean(item),
          text: () =>
            phrase`That is the scrub radius with the spacer: the offset down at the road. It is asked for next. Stay at the height of the wheel centre first.`,
        },
      ],
      solution: ({ spindle_mm, spacer_mm }, _earlier, value) =>
        phrase`The wheel centre moves outboard by the whole spacer and the axis stays: ${mm(spindle_mm)} + ${mm(spacer_mm)} = ${rounded(value, 'mm', 0)}, inboard.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius with the spacer',
      value: (item, earlier) =>
        measure(
          cornerAtCentre({
            spindleOffset: step(earlier, 0),
            inclination: inclination(item),
            loadedRadius: radius(item),
          }),
        ).scrubRadius,
      sum: 'rounded',
      hint: () =>
        phrase`Go down from the wheel centre to the road along the axis. On the way down, does the axis come nearer to the wheel or go away from it?`,
      slips: [
        {
          id: 'lean-added',
          confuses: 'lean of the axis',
          value: (item, earlier) => step(earlier, 0) + lean(item),
          text: () =>
            phrase`That adds the lean of the axis, as on the way up from the road to the wheel centre. On the way down the axis goes outboard, toward the wheel: take it away.`,
        },
        {
          id: 'spacer-left-out',
          confuses: 'scrub radius without the spacer',
          value: (item) => spindle(item) - lean(item),
          text: () =>
            phrase`That is the scrub radius without the spacer. A spacer moves the whole wheel, so it counts at the road as much as at the wheel centre.`,
        },
        {
          id: 'spacer-counted-again',
          confuses: 'spacer',
          value: (item, earlier) => step(earlier, 0) + spacer(item) - lean(item),
          text: () =>
            phrase`That has the spacer in it twice: it is in the new spindle offset already. Start from there and only go down the axis.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => lean(item) - step(earlier, 0),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. Start from the spindle offset and take the lean away, not the other way about.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Down to the road the axis goes outboard by ${mm(item.radius_mm)} · tan ${deg(item.inclination_deg)} = ${computed(lean(item), 'length')}: ${rounded(step(earlier, 0), 'mm', 0)} − ${computed(lean(item), 'length')} = ${computed(value, 'length')}. The spacer has added the same at both heights.`,
    },
  ],
};
