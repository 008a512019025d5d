import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { inward, sideWords, tiltOn, type InTurn } from '../paper/bearing.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly which: InTurn;
  readonly load_N: number;
  readonly side_N: number;
  readonly radius_mm: number;
  readonly offset_mm: number;
}

/** No spread is asked for; any will do. */
const SPREAD_MM = 60;

const on = (item: Item) => ({
  ...item,
  spread_mm: SPREAD_MM,
  inward_N: inward(item.which, item.side_N),
});
const bySide = (item: Item): number => tiltOn({ ...on(item), load_N: 0 });
const byLoad = (item: Item): number => tiltOn({ ...on(item), inward_N: 0 });
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const offset = ({ offset_mm }: Item): number => si(offset_mm, 'mm');

/** The two moments that tip a wheel on its bearing, and which of them matters. */
export const tiltInATurn: Kind<Item> = {
  id: 'tilt-in-a-turn',
  version: 2,
  title: 'Two moments on one bearing',
  lesson: 'cornering',
  level: 1,
  draw: (random) => ({
    which: random.pick(['outer', 'inner']),
    load_N: random.grid(2500, 7000, 50),
    side_N: random.grid(800, 3600, 50),
    radius_mm: random.integer(280, 360),
    offset_mm: random.pick([-1, 1]) * random.integer(5, 40),
  }),
  // Grip has an end. And the side force has the last word: too seldom is it the load for a class to get it evenly.
  sound: ({ load_N, side_N, radius_mm, offset_mm }) =>
    side_N < 0.75 * load_N && side_N * radius_mm > load_N * Math.abs(offset_mm),
  pattern: ({ which }) => which,
  question: ({ which, load_N, side_N, radius_mm, offset_mm }) =>
    phrase`In a turn the road pushes the ${which} front wheel ${sideWords(which)} with ${given(side_N, 'N')} and up with ${given(load_N, 'N')}. The loaded radius is ${mm(radius_mm)}, and the load line lies ${directed(offset_mm, 'mm', QUANTITIES.loadLineOffset)} of the rows’ mid-plane. What tips the wheel on its bearing?`,
  ...bearingPictures<Item>({
    given: on,
    end: on,
    toRoad: true,
    anySpread: true,
    parts: {
      side: {
        seen: 'distance',
        of: 'radius',
        says: 'lever',
        taken: { offset: 'offset' },
      },
      load: {
        seen: 'distance',
        of: 'offset',
        says: 'lever',
        taken: { radius: 'radius' },
      },
    },
  }),
  parts: [
    {
      id: 'side',
      quantity: QUANTITIES.sideTilt,
      unit: 'Nm',
      decimals: 1,
      label: 'Tilting moment of the side force',
      value: bySide,
      hint: () =>
        phrase`The side force acts at the road, the bearing sits at the spin axis: how far apart are they? Push the bottom of the wheel that way in your mind. Where does its top go?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of the tipping',
          value: (item) => -bySide(item),
          text: () =>
            phrase`The size fits, but the direction of the tipping is turned round: it would be so if the road pushed at the top. It pushes at the bottom, and the top of the wheel goes the other way.`,
        },
        {
          id: 'offset',
          confuses: 'load-line offset',
          value: (item) => Math.sign(bySide(item)) * item.side_N * Math.abs(offset(item)),
          text: () =>
            phrase`That takes the load-line offset for the lever. It is the lever of the wheel load, which goes straight up; a force across the car has the height from the road to the spin axis.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * bySide(item),
          text: () =>
            phrase`That takes the diameter of the wheel. The bearing sits in the middle of it, one loaded radius above the road.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * bySide(item),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the radius has to be in metres.`,
        },
      ],
      solution: ({ side_N, which }, _earlier, value) =>
        phrase`The lever is the loaded radius: ${given(side_N, 'N')} · ${rounded(Math.abs(value) / side_N, 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}. The bottom is pushed ${sideWords(which)}, so it is ${sign(value, QUANTITIES.sideTilt)}.`,
    },
    {
      id: 'load',
      quantity: QUANTITIES.loadTilt,
      unit: 'Nm',
      decimals: 1,
      label: 'Tilting moment of the wheel load',
      value: byLoad,
      hint: () =>
        phrase`The wheel load goes up along the load line. How far is that from the middle of the rows? A push up on the outboard end of the hub tips the wheel top inboard.`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'inboard and outboard',
          value: (item) => -byLoad(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. A load that goes up outboard of the middle lifts the outboard end of the hub and takes the top of the wheel inboard.`,
        },
        {
          id: 'radius',
          confuses: 'loaded radius',
          value: (item) => Math.sign(byLoad(item)) * item.load_N * radius(item),
          text: () =>
            phrase`That takes the loaded radius for the lever. The wheel load runs along it, not across it; its lever is how far its line passes from the rows’ mid-plane.`,
        },
        {
          id: 'side-force',
          confuses: 'side force',
          value: (item) => item.side_N * offset(item),
          text: () =>
            phrase`That takes the side force with the load-line offset. The offset is a distance across the car: it is the lever of the force that goes up.`,
        },
        {
          id: 'half-load',
          confuses: 'half of the wheel load',
          value: (item) => byLoad(item) / 2,
          text: () =>
            phrase`That takes half of the wheel load, what a row carries with the load line in the middle. For the tipping count the load that the road gives, all of it, at the load line.`,
        },
      ],
      solution: ({ load_N, offset_mm }, _earlier, value) =>
        phrase`${given(load_N, 'N')} · ${given(Math.abs(offset_mm) / 1000, 'm')} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, QUANTITIES.loadTilt)}.`,
    },
    {
      id: 'together',
      quantity: QUANTITIES.tilt,
      unit: 'Nm',
      decimals: 1,
      label: 'Both together',
      value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Add the two with their signs: top inboard is positive, top outboard negative.`,
      slips: [
        {
          id: 'signs',
          confuses: 'sign of the second moment',
          value: (_item, earlier) => step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`That has the sign of the second moment turned round. Say of each which way the top of the wheel goes, and add what goes the same way.`,
        },
        {
          id: 'sizes',
          confuses: 'sum of the sizes',
          value: (_item, earlier) => {
            const [a, b] = [step(earlier, 0), step(earlier, 1)];
            const sizes = Math.abs(a) + Math.abs(b);
            // Where the two go the same way that is right: then their difference is the wrong road.
            return a * b < 0 ? -Math.sign(a - b) * sizes : -Math.sign(a) * sizes;
          },
          text: () =>
            phrase`That is the sum of the sizes, and the sign has come on afterwards. Give each of the two moments its own sign first, and then add.`,
        },
        {
          id: 'side-alone',
          confuses: 'side force alone',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the moment of the side force alone. It is the larger of the two as a rule; the wheel load stands beside the middle of the rows all the same.`,
        },
        {
          id: 'load-alone',
          confuses: 'wheel load alone',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the moment of the wheel load alone, as on a straight road. In a turn the side force comes on top.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`${term(rounded(step(earlier, 0), 'Nm', 2))} + ${term(rounded(step(earlier, 1), 'Nm', 2))} = ${rounded(value, 'Nm', 1)}: ${sign(value, QUANTITIES.tilt)}.`,
    },
  ],
};
