import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { inward, rowLoads, sideWords, tiltOn, type InTurn } from '../paper/bearing.ts';
import { directed, given, mm, phrase, rounded, sign, term } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';
import { otherRowSlips } from '../slips/row-slips.ts';

interface Item {
  readonly which: InTurn;
  readonly load_N: number;
  readonly side_N: number;
  readonly radius_mm: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
}

const on = (item: Item) => ({ ...item, inward_N: inward(item.which, item.side_N) });
const bySide = (item: Item): number => tiltOn({ ...on(item), load_N: 0 });
const byLoad = (item: Item): number => tiltOn({ ...on(item), inward_N: 0 });
/** What a moment puts on the outboard row over the spread, by the core: a load without weight at a made-up radius. */
const couple = (item: Item, moment: number): number =>
  rowLoads({ ...item, load_N: 0, radius_mm: 1000, inward_N: -moment }).outboard;

/** A moment becomes a couple of row loads, and half of the wheel load comes on top. */
export const rowLoadsInATurn: Kind<Item> = {
  id: 'row-loads-in-a-turn',
  version: 1,
  title: 'A couple on two rows',
  lesson: 'cornering',
  level: 2,
  draw: (random) => ({
    which: random.pick(['outer', 'inner']),
    load_N: random.grid(2500, 6500, 50),
    side_N: random.grid(800, 3200, 50),
    radius_mm: random.integer(280, 350),
    offset_mm: random.integer(2, 12),
    spread_mm: random.grid(54, 80, 2),
  }),
  // Hard enough a bend for the row on the far side to be loaded at the bottom: so it is in any that matters.
  sound: ({ which, load_N, side_N, radius_mm, offset_mm, spread_mm }) => {
    const toCentre_mm = spread_mm / 2 + (which === 'outer' ? offset_mm : -offset_mm);
    return side_N < 0.75 * load_N && side_N * radius_mm > 1.1 * load_N * toCentre_mm;
  },
  pattern: ({ which }) => which,
  question: ({ which, load_N, side_N, radius_mm, offset_mm, spread_mm }) =>
    phrase`A car goes round a bend. On its ${which} front wheel the road pushes up with ${given(load_N, 'N')} and ${sideWords(which)} with ${given(side_N, 'N')}. Loaded radius ${mm(radius_mm)}, pressure centres ${mm(spread_mm)} apart, load line ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle. What do the rows carry?`,
  ...bearingPictures<Item>({
    given: on,
    end: on,
    toRoad: true,
    parts: {
      outboard: { seen: 'row', row: 'outboard' },
      inboard: { seen: 'row', row: 'inboard' },
    },
  }),
  drawnTrue: ['outboard', 'inboard'],
  parts: [
    {
      id: 'tilt',
      quantity: QUANTITIES.tilt,
      unit: 'Nm',
      decimals: 1,
      label: 'Tilting moment on the bearing',
      value: (item) => tiltOn(on(item)),
      hint: () =>
        phrase`Two moments about the middle of the rows: the side force with the loaded radius, the wheel load with the load-line offset. Which way does each tip the wheel?`,
      slips: [
        {
          id: 'side-turned-round',
          confuses: 'sense of the side force',
          value: (item) => byLoad(item) - bySide(item),
          text: () =>
            phrase`That has the sense of the side force turned round: it would be the other wheel of the axle. The road pushes at the bottom, and the top of the wheel goes the other way.`,
        },
        {
          id: 'side-alone',
          confuses: 'side force alone',
          value: bySide,
          text: () =>
            phrase`That is the side force alone. It is by far the larger, but the wheel load does not stand in the middle of the rows either.`,
        },
        {
          id: 'wrong-way',
          confuses: 'both directions',
          value: (item) => -tiltOn(on(item)),
          text: () =>
            phrase`The size fits, but both directions are turned round. Positive is what the wheel load does from outboard of the middle: it takes the top of the wheel inboard.`,
        },
        {
          id: 'load-alone',
          confuses: 'straight road',
          value: byLoad,
          text: () =>
            phrase`That is the moment of the wheel load, as on a straight road. The side force has the whole loaded radius for a lever and must not be left out.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Wheel load: ${given(item.load_N, 'N')} · ${given(item.offset_mm / 1000, 'm')} = ${rounded(byLoad(item), 'Nm', 1)}. Side force: ${given(item.side_N, 'N')} · ${given(item.radius_mm / 1000, 'm')} = ${rounded(Math.abs(bySide(item)), 'Nm', 1)}, ${sign(bySide(item), QUANTITIES.sideTilt)}. Together ${rounded(byLoad(item), 'Nm', 2)} + ${term(rounded(bySide(item), 'Nm', 2))} = ${rounded(value, 'Nm', 1)}: ${sign(value, QUANTITIES.tilt)}.`,
    },
    {
      id: 'couple',
      quantity: OWN_QUANTITIES.coupleForce,
      unit: 'N',
      decimals: 0,
      label: 'Force of the couple that holds it',
      value: (item, earlier) => couple(item, step(earlier, 0)),
      hint: () =>
        phrase`The rows hold a moment with two equal forces, one up and one down. How far apart are they? A wheel tipped top inboard leans on the top of its outboard row.`,
      slips: [
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) => 2 * couple(item, step(earlier, 0)),
          text: () =>
            phrase`That divides by half of the spread, as if one row held the moment about the middle alone. Both do, each with half of it: together over the whole spread.`,
        },
        {
          id: 'shared',
          confuses: 'half of the moment',
          value: (item, earlier) => couple(item, step(earlier, 0)) / 2,
          text: () =>
            phrase`That gives each row half of the moment over the whole spread. A couple of two equal forces has the moment of one of them times their distance.`,
        },
        {
          id: 'other-row',
          confuses: 'other row',
          value: (item, earlier) => -couple(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but it is the other row that this comes on top of. A wheel tipped top inboard presses up at the outboard end of its hub, top outboard at the inboard end.`,
        },
        {
          id: 'loaded-radius',
          confuses: 'loaded radius',
          value: (item, earlier) =>
            (couple(item, step(earlier, 0)) * item.spread_mm) / item.radius_mm,
          text: () =>
            phrase`That divides by the loaded radius, the way back to a force at the road. The rows hold the moment where they are, over the spread of their pressure centres.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Moment over spread: ${rounded(Math.abs(step(earlier, 0)), 'Nm', 3)} ÷ ${given(item.spread_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}, ${sign(value, OWN_QUANTITIES.coupleForce)}.`,
    },
    {
      id: 'outboard',
      quantity: QUANTITIES.outboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the outboard row',
      value: (item, earlier) => item.load_N / 2 + step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Half of the wheel load, at the top; and the couple, with its sign. If the couple takes away more than there is, the row is loaded at the bottom.`,
      slips: [
        {
          id: 'couple-alone',
          confuses: 'couple alone',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the couple alone. The wheel load itself has to be carried too, half of it by either row.`,
        },
        {
          id: 'whole-load',
          confuses: 'whole wheel load',
          value: (item, earlier) => item.load_N + step(earlier, 1),
          text: () =>
            phrase`That puts the whole wheel load on this row. About the middle of the rows the load has been moved there by its moment, and from the middle each row takes half.`,
        },
        {
          id: 'other-row',
          confuses: 'inboard row',
          value: (item, earlier) => item.load_N / 2 - step(earlier, 1),
          text: () =>
            phrase`That is the inboard row: what the couple gives to one row it takes from the other. Look again which of the two it loads.`,
        },
        {
          id: 'turned-round',
          confuses: 'top and bottom',
          value: (item, earlier) => -(item.load_N / 2 + step(earlier, 1)),
          text: () =>
            phrase`The size fits, but top and bottom have changed places. Half of the wheel load is at the top, and counts as positive; the couple comes on with its own sign.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`${given(load_N / 2, 'N')} + ${term(rounded(step(earlier, 1), 'N', 1))} = ${rounded(value, 'N', 1)}: ${sign(value, QUANTITIES.outboardRadial)}.`,
    },
    {
      id: 'inboard',
      quantity: QUANTITIES.inboardRadial,
      unit: 'N',
      decimals: 0,
      label: 'Radial load of the inboard row',
      value: (item, earlier) => item.load_N - step(earlier, 2),
      sum: 'rounded',
      hint: () => phrase`The two together are still the wheel load, with their signs.`,
      slips: [
        ...otherRowSlips<Item>(
          ({ load_N }) => load_N,
          (_item, earlier: Earlier) => step(earlier, 2),
        ),
        {
          id: 'couple-alone',
          confuses: 'couple alone',
          value: (_item, earlier) => -step(earlier, 1),
          text: () =>
            phrase`That is the couple alone. This row has its half of the wheel load to carry as well.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`${given(load_N, 'N')} − ${term(rounded(step(earlier, 2), 'N', 1))} = ${rounded(value, 'N', 1)}: ${sign(value, QUANTITIES.inboardRadial)}.`,
    },
  ],
};
