import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { mm, phrase, rounded, si, sign } from '../phrase.ts';
import type { WheelPicture } from '../pictures/part-pictures.ts';
import { toldMark, wrongPlace } from '../pictures/wheel-pictures.ts';

interface Item {
  readonly width_mm: number;
  readonly backSpacing_mm: number;
}

const width = ({ width_mm }: Item): number => si(width_mm, 'mm');
const back = ({ backSpacing_mm }: Item): number => si(backSpacing_mm, 'mm');

const seen = ({ width_mm, backSpacing_mm }: Item): WheelPicture => ({
  scene: 'wheel',
  wheel: { middle_mm: width_mm / 2 - backSpacing_mm, width_mm },
  measures: [],
});

/** The inset of a wheel on the bench, from its back spacing. */
export const insetByStraightedge: Kind<Item> = {
  id: 'inset-by-straightedge',
  version: 1,
  title: 'Inset by straightedge',
  lesson: 'measuring-your-own-car',
  level: 1,
  draw: (random) => ({
    width_mm: random.grid(150, 270, 2),
    backSpacing_mm: random.grid(60, 190, 2),
  }),
  sound: (item) => Math.abs(back(item) - width(item) / 2) <= 0.062,
  question: ({ width_mm, backSpacing_mm }) =>
    phrase`A wheel lies face down on a blanket, without its tyre. Its overall width, from edge to edge of the rim, is ${mm(width_mm)}. From a straightedge across the inner edge down to the face that sits on the hub you measure ${mm(backSpacing_mm)}. What inset has this wheel?`,
  picture: (item) => ({
    ...seen(item),
    measures: [
      { of: 'width', says: mm(item.width_mm).figure },
      { of: 'back', says: mm(item.backSpacing_mm).figure },
    ],
  }),
  solved: (item) => ({
    ...seen(item),
    measures: [
      toldMark('half', 'half', width(item) / 2),
      toldMark('inset', 'inset', back(item) - width(item) / 2),
    ],
  }),
  wrong: (item, road) =>
    road.part === 'half'
      ? wrongPlace(
          { ...seen(item), measures: [{ of: 'half', says: 'half' }] },
          {
            road,
            at_mm: (value) => 1000 * value - item.backSpacing_mm,
            from_mm: -item.backSpacing_mm,
          },
        )
      : wrongPlace(
          {
            ...seen({ ...item, width_mm: 2000 * step(road.earlier, 0) }),
            measures: [{ of: 'inset', says: 'inset' }],
          },
          { road, at_mm: (value) => -1000 * value, from_mm: 0 },
        ),
  parts: [
    {
      id: 'half',
      quantity: OWN_QUANTITIES.halfWidth,
      unit: 'mm',
      decimals: 0,
      label: 'From the inner edge to the middle plane of the wheel',
      value: (item) => width(item) / 2,
      sum: 'exact',
      hint: () =>
        phrase`Inset is counted from the middle of the wheel. How far is the middle from an edge?`,
      slips: [
        {
          id: 'whole',
          confuses: 'outer edge',
          value: width,
          text: () =>
            phrase`That is the way to the outer edge of the rim. The middle plane lies halfway between the two edges.`,
        },
        {
          id: 'front-spacing',
          confuses: 'front spacing',
          value: (item) => width(item) - back(item),
          text: () =>
            phrase`That is the front spacing, from the hub face to the outer edge. The middle plane is halfway between the edges, wherever the hub face sits.`,
        },
        {
          id: 'half-back',
          confuses: 'half of the back spacing',
          value: (item) => back(item) / 2,
          text: () =>
            phrase`That is half of the back spacing, which leads to nothing on the wheel. The middle plane follows from the width alone.`,
        },
        {
          id: 'inch-off',
          confuses: 'width in the wheel’s name',
          value: (item) => (width(item) - si(25.4, 'mm')) / 2,
          text: () =>
            phrase`That takes an inch off first, to get the width in the wheel’s name, which is counted between the tyre’s seats. The straightedge lies on the outer edges, so the overall width is the right one here.`,
        },
      ],
      solution: ({ width_mm }, _earlier, value) =>
        phrase`Half of the overall width: ${mm(width_mm)} ÷ ${{ figure: '2' }} = ${rounded(value, 'mm', 0)}.`,
    },
    {
      id: 'inset',
      quantity: OWN_QUANTITIES.wheelInset,
      unit: 'mm',
      decimals: 0,
      label: 'Inset',
      value: (item, earlier) => back(item) - step(earlier, 0),
      sum: 'exact',
      hint: () =>
        phrase`Both are counted from the inner edge outward. Which lies farther out, the hub face or the middle?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => step(earlier, 0) - back(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. Both ways begin at the inner edge: the longer one ends farther outboard.`,
        },
        {
          id: 'whole-width',
          confuses: 'whole width',
          value: (item) => back(item) - width(item),
          text: () =>
            phrase`That takes the whole width off, and is counted from the outer edge. Inset is counted from the middle plane.`,
        },
        {
          id: 'added',
          confuses: 'adding the half width',
          value: (item, earlier) => back(item) + step(earlier, 0),
          text: () =>
            phrase`That comes from adding the half width. It would give the back spacing from an inset. Here the back spacing is known: take the half width off.`,
        },
        {
          id: 'back-spacing',
          confuses: 'back spacing for inset',
          value: back,
          text: () =>
            phrase`That takes the back spacing for inset. Some catalogues list the one and some the other. Back spacing begins at the inner edge, inset at the middle plane.`,
        },
      ],
      solution: ({ backSpacing_mm }, earlier, value) =>
        phrase`Back spacing less half the width: ${mm(backSpacing_mm)} − ${rounded(step(earlier, 0), 'mm', 0)} = ${rounded(value, 'mm', 0)}: the hub face lies ${sign(value, OWN_QUANTITIES.wheelInset)} of the middle plane.`,
    },
  ],
};
