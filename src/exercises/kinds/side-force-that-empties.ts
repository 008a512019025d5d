import { loadLineCrossing } from '#core/bearing/rows.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { inward, sideWords, type InTurn } from '../paper/bearing.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly which: InTurn;
  readonly load_N: number;
  readonly radius_mm: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
}

const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
const offset = ({ offset_mm }: Item): number => si(offset_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
/** The row that is about to be left without load, and the one that then carries everything. */
const emptied = ({ which }: Item): string => (which === 'outer' ? 'outboard' : 'inboard');
const holding = ({ which }: Item): string => (which === 'outer' ? 'inboard' : 'outboard');
/** +1 where the other pressure centre lies inboard of the load line. */
const way = ({ which }: Item): 1 | -1 => (which === 'outer' ? 1 : -1);
const distance = (item: Item): number => spread(item) / 2 + way(item) * offset(item);
/** A newton toward the car takes the crossing so far inboard, by the core. */
const perNewton = (item: Item): number =>
  loadLineCrossing({ loadLineOffset: 0 }, { vertical: item.load_N, inward: -1 }, radius(item));

/** The pictures: which pressure centre the lever reaches to hangs on the wheel. */
const seen = (which: InTurn) =>
  bearingPictures<Item>({
    given: (item) => item,
    end: (item) => ({ ...item, inward_N: Math.sign(way(item)) * emptying(item) }),
    toRoad: true,
    parts: {
      distance: {
        seen: 'distance',
        on: (item) => item,
        of: which === 'outer' ? 'fromInboard' : 'fromOutboard',
        says: 'lever',
        taken: {
          'other-centre': which === 'outer' ? 'fromOutboard' : 'fromInboard',
          'half-spread': 'halfSpread',
          'offset-alone': 'offset',
        },
      },
      'side-force': { seen: 'side' },
    },
  });

/** Size of the side force with which the load line has gone to the pressure centre. */
const emptying = (item: Item): number => distance(item) / Math.abs(perNewton(item));

/** How hard a bend has to be for one row to lose its load: backwards from the pressure centre to the side force. */
export const sideForceThatEmpties: Kind<Item> = {
  id: 'side-force-that-empties',
  version: 1,
  title: 'One row left alone',
  lesson: 'cornering',
  level: 3,
  draw: (random) => ({
    which: random.pick(['outer', 'inner']),
    load_N: random.grid(2500, 6500, 50),
    radius_mm: random.integer(280, 350),
    offset_mm: random.pick([-1, 1]) * random.integer(3, 15),
    spread_mm: random.grid(54, 80, 2),
  }),
  sound: (item) => distance(item) > 0.012,
  pattern: ({ which }) => which,
  question: (item) =>
    phrase`On the ${item.which} front wheel of a car in a bend the side force pushes ${sideWords(item.which)}. The more it grows, the less is left to the ${emptied(item)} row. The wheel load stays at ${given(item.load_N, 'N')}, the loaded radius is ${mm(item.radius_mm)}, the pressure centres are ${mm(item.spread_mm)} apart, and the load line lies ${directed(item.offset_mm, 'mm', QUANTITIES.loadLineOffset)} of their middle. Which side force leaves the ${emptied(item)} row with no radial load at all?`,
  ...seen('outer'),
  wrong: (item, road) => seen(item.which).wrong?.(item, road),
  parts: [
    {
      id: 'distance',
      quantity: OWN_QUANTITIES.contactReach,
      unit: 'mm',
      decimals: 0,
      label: 'From the load line to the pressure centre of the row that holds alone',
      value: distance,
      sum: 'exact',
      possible: (value) => value > 0,
      hint: (item) =>
        phrase`When the ${emptied(item)} row is empty, everything goes through the ${holding(item)} one. Where is that one’s pressure centre, seen from the load line?`,
      slips: [
        {
          id: 'other-centre',
          confuses: 'other pressure centre',
          value: (item) => spread(item) / 2 - way(item) * offset(item),
          text: () =>
            phrase`That is the way to the other pressure centre. Which one is near and which far depends on the side of the middle that the load line lies on.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item) => spread(item) / 2,
          text: () =>
            phrase`That is half of the spread, counted from the middle. The wheel load does not go up through the middle: count from the load line.`,
        },
        {
          id: 'whole-spread',
          confuses: 'whole spread',
          value: (item) => spread(item) + way(item) * offset(item),
          text: () =>
            phrase`That begins with the whole spread. The load-line offset is counted from the middle of it, and to a pressure centre it is half of the spread from there.`,
        },
        {
          id: 'offset-alone',
          confuses: 'offset alone',
          value: (item) => Math.abs(offset(item)),
          text: () =>
            phrase`That is the offset alone, the way to the middle between the rows. With the load line there both rows would carry the same; here one of them is to carry nothing.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Half the spread, and the offset with the sign that it has on that side: ${given(item.spread_mm / 2, 'mm')} + ${term(mm(way(item) * item.offset_mm))} = ${rounded(value, 'mm', 0)}.`,
    },
    {
      id: 'moment',
      quantity: OWN_QUANTITIES.momentToHold,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the wheel load about that pressure centre',
      value: (item, earlier) => item.load_N * step(earlier, 0),
      possible: (value) => value > 0,
      hint: () =>
        phrase`The wheel load goes straight up along the load line. Its lever about the pressure centre is the distance that you have found.`,
      slips: [
        {
          id: 'half-load',
          confuses: 'half of the wheel load',
          value: (item, earlier) => (item.load_N * step(earlier, 0)) / 2,
          text: () =>
            phrase`That takes half of the wheel load, as if each row still carried its share. One row carries nothing here, and about the other the whole load has its moment.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * item.load_N * step(earlier, 0),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the distance has to be in metres.`,
        },
        {
          id: 'loaded-radius',
          confuses: 'loaded radius',
          value: (item) => item.load_N * radius(item),
          text: () =>
            phrase`That takes the loaded radius for the lever. The wheel load runs along the radius; the lever lies across it, from the load line to the pressure centre.`,
        },
        {
          id: 'whole-spread',
          confuses: 'whole spread',
          value: (item) => item.load_N * spread(item),
          text: () =>
            phrase`That takes the whole spread for the lever. It is the lever of the other row; the wheel load is only as far away as its load line.`,
        },
      ],
      solution: ({ load_N }, earlier, value) =>
        phrase`${given(load_N, 'N')} · ${rounded(step(earlier, 0), 'm', 3)} = ${rounded(value, 'Nm', 2)}.`,
    },
    {
      id: 'side-force',
      quantity: OWN_QUANTITIES.sideForce,
      unit: 'N',
      decimals: 0,
      label: 'Side force that leaves that row empty',
      value: (item, earlier) => (way(item) * step(earlier, 1)) / item.load_N / perNewton(item),
      hint: () =>
        phrase`About the same pressure centre the side force must make the same moment the other way. How high above the road is that centre? And which way is this wheel pushed?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of the side force',
          value: (item, earlier) => (-inward(item.which, 1) * step(earlier, 1)) / radius(item),
          text: () =>
            phrase`The size fits, but the direction of the side force does not: it is that of the other wheel of the axle. The outer wheel is pushed toward the car, the inner one away from it.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item, earlier) => (inward(item.which, 1) * step(earlier, 1)) / radius(item) / 2,
          text: () =>
            phrase`That takes the diameter of the wheel for the lever. From the road up to the spin axis it is one loaded radius.`,
        },
        {
          id: 'spread',
          confuses: 'pressure-centre spread',
          value: (item, earlier) => (inward(item.which, 1) * step(earlier, 1)) / spread(item),
          text: () =>
            phrase`That divides by the pressure-centre spread, which gives a force on a row. The side force acts at the road, with the loaded radius for a lever.`,
        },
        {
          id: 'multiplied',
          confuses: 'way from a force to a moment',
          value: (item, earlier) => inward(item.which, 1) * step(earlier, 1) * radius(item),
          text: () =>
            phrase`That multiplies by the radius, the way from a force to a moment. Here the moment is known and the force asked for: divide.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'Nm', 3)} ÷ ${given(item.radius_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}, ${sign(value, OWN_QUANTITIES.sideForce)}. Beyond that the ${emptied(item)} row is loaded at the bottom.`,
    },
  ],
};
