import { lifeDistance_km, lifeExponent, ratingLife } from '#core/bearing/life.ts';
import type { RowKind } from '#core/bearing/factors.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { lifeAt, otherKind, ROLLING } from '../paper/rating.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import type { ChartPicture } from '../pictures/picture.ts';

interface Item {
  readonly kind: RowKind;
  readonly load_kN: number;
  readonly radius_mm: number;
  /** What the curves are made of; nobody gives it away. */
  readonly curves: { readonly rating_kN: number };
}

/** Million revolutions from one thin line of the chart to the next, and from one numbered line to the next. */
const DIVISION = 10;
const NUMBERED = 50;
const MOST = 250;
const LOADS = { least: 2, most: 8 };
const POINTS = 48;

const life = ({ curves, load_kN, kind }: Item, load = load_kN, row = kind): number =>
  lifeAt(row, curves.rating_kN / load);
/** The distance of so many revolutions, in metres. */
const way = (revolutions: number, { radius_mm }: Item): number =>
  toSI(lifeDistance_km(fromSI(revolutions, 'Mrev'), si(radius_mm, 'mm')), 'km');
/** Million revolutions above the numbered line below. */
const above = (item: Item): number => fromSI(life(item), 'Mrev') % NUMBERED;

const picture = ({ curves: { rating_kN } }: Item): ChartPicture => ({
  scene: 'chart',
  across: { name: 'equivalent load, kN', ...LOADS, numbered: 1, division: 0.5 },
  up: {
    name: 'rating life, million revolutions',
    least: 0,
    most: MOST,
    numbered: NUMBERED,
    division: DIVISION,
  },
  curves: (['ball', 'roller'] as const).map((kind) => ({
    says: ROLLING[kind],
    points: Array.from({ length: POINTS + 1 }, (_, i): readonly [number, number] => {
      const load = LOADS.least + ((LOADS.most - LOADS.least) * i) / POINTS;
      return [load, ratingLife(kind, rating_kN, load)];
    }).filter(([, y]) => y <= MOST),
  })),
});

/** Read a life off a chart, and go on from it to a distance. */
export const readLifeChart: Kind<Item> = {
  id: 'read-life-chart',
  version: 1,
  title: 'Read the life of a row',
  lesson: 'rating-life',
  level: 2,
  draw: (random) => {
    const kind = random.pick<RowKind>(['ball', 'roller']);
    const load_kN = random.pick([3.5, 4.5, 5.5, 6.5]);
    // A life between two numbered lines, far enough above the lower one that thin lines have to be counted.
    const life_Mrev = random.pick([60, 100, 150, 200]) + random.integer(26, 38);
    const rating_kN = Math.round(10 * load_kN * life_Mrev ** (1 / lifeExponent(kind))) / 10;
    return { kind, load_kN, radius_mm: random.integer(240, 420), curves: { rating_kN } };
  },
  sound: (item) => above(item) >= 24,
  pattern: ({ kind }) => kind,
  question: ({ kind, load_kN, radius_mm }) =>
    phrase`The chart has the rating lives of two bearing rows of the same load rating, one with balls and one with tapered rollers. A row with ${ROLLING[kind]} carries an equivalent load of ${given(load_kN, 'kN')}; the rolling radius of its wheel is ${mm(radius_mm)}. Read its life off the chart, to half a division of the grid, and work out how far that is.`,
  picture,
  parts: [
    {
      id: 'life',
      quantity: OWN_QUANTITIES.rowLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life, read off the chart',
      value: (item) => life(item),
      readTo: () => toSI(DIVISION / 2, 'Mrev'),
      hint: () =>
        phrase`Go straight up from the load to the right curve, then level to the scale on the left. How much is one thin line worth?`,
      slips: [
        {
          id: 'other-curve',
          confuses: 'other curve',
          value: (item) => life(item, item.load_kN, otherKind(item.kind)),
          text: ({ kind }) =>
            phrase`That is read off the other curve, of the row with ${ROLLING[otherKind(kind)]}. For ${ROLLING[kind]} go on to the one that has their name.`,
        },
        {
          id: 'line-beside',
          confuses: 'next line of the load scale',
          value: (item) => life(item, item.load_kN + 0.5),
          text: () =>
            phrase`That is read at the next line of the load scale, half a kilonewton farther right. Thin lines there are half kilonewtons, and the one between two numbers is meant.`,
        },
        {
          id: 'line-before',
          confuses: 'line before',
          value: (item) => life(item, item.load_kN - 0.5),
          text: () =>
            phrase`That is read at the line before, half a kilonewton too far left. Thin lines there are half kilonewtons, and the one between two numbers is meant.`,
        },
        {
          id: 'thin-lines',
          confuses: 'thin lines',
          value: (item) => life(item) - toSI(0.9 * above(item), 'Mrev'),
          text: () =>
            phrase`That counts each of the thin lines as one. From one number to the next there are five of them, and they share out ${bare(NUMBERED, 0)} million revolutions: each is worth ten.`,
        },
      ],
      solution: ({ load_kN, kind }, _earlier, value) =>
        phrase`Up from ${given(load_kN, 'kN')} to the curve of the ${ROLLING[kind]}, and level to the left: about ${rounded(value, 'Mrev', 0)}. Whoever reads within half a division reads well enough.`,
    },
    {
      id: 'circumference',
      quantity: { name: 'distance of one turn', symbol: 'U', kind: 'distance' },
      unit: 'm',
      decimals: 3,
      label: 'Way of the wheel in one turn',
      value: (item) => way(1, item),
      sum: 'rounded',
      hint: () =>
        phrase`A wheel that rolls lays its circumference down on the road, 2π times the rolling radius.`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * way(1, item),
          text: () =>
            phrase`That is 2π times a diameter, as if the radius were one. A circumference is π times the diameter, or 2π times the radius.`,
        },
        {
          id: 'half-turn',
          confuses: 'half a turn',
          value: (item) => way(1, item) / 2,
          text: () =>
            phrase`That is the distance of half a turn: π times the radius. The circumference is 2π times the radius.`,
        },
        {
          id: 'radius',
          confuses: 'straight across',
          value: ({ radius_mm }) => si(2 * radius_mm, 'mm'),
          text: () =>
            phrase`That goes straight across the wheel, from one side to the other. A wheel rolls along its rim, more than three times as far.`,
        },
        {
          id: 'square',
          confuses: 'area',
          value: ({ radius_mm }) => Math.PI * si(radius_mm, 'mm') ** 2,
          text: () =>
            phrase`That is the area of a circle, in square metres. The distance in one turn is its circumference, 2π times the radius.`,
        },
      ],
      solution: ({ radius_mm }, _earlier, value) =>
        phrase`6.2832 · ${rounded(si(radius_mm, 'mm'), 'm', 3)} = ${rounded(value, 'm', 3)}, with 2π for the number.`,
    },
    {
      id: 'way',
      quantity: OWN_QUANTITIES.lifeWay,
      unit: 'km',
      decimals: 0,
      label: 'The same as a distance',
      value: (_item, earlier) => step(earlier, 0) * step(earlier, 1),
      hint: () =>
        phrase`So many million turns, each with the distance of one: mind the million, and that a kilometre is a thousand metres.`,
      slips: [
        {
          id: 'metres',
          confuses: 'metres',
          value: (_item, earlier) => 1000 * step(earlier, 0) * step(earlier, 1),
          text: () =>
            phrase`That is the distance in metres. A kilometre has a thousand of them: in million turns and metres, the product comes out in thousand kilometres.`,
        },
        {
          id: 'thousands',
          confuses: 'thousand kilometres',
          value: (_item, earlier) => (step(earlier, 0) * step(earlier, 1)) / 1000,
          text: () =>
            phrase`That is in thousand kilometres. A million turns of about two metres are two million metres, and those are two thousand kilometres.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (_item, earlier) => 2 * step(earlier, 0) * step(earlier, 1),
          text: () =>
            phrase`That adds up the ways of both wheels. They roll side by side, so the car goes as far as one of them.`,
        },
        {
          id: 'divided',
          confuses: 'turns for each metre',
          value: (_item, earlier) => step(earlier, 0) / step(earlier, 1),
          text: () =>
            phrase`That divides by the distance of one turn, as one does to find the turns for each metre. Here the turns are known and the distance is asked for: multiply.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'Mrev', 0)} of ${rounded(step(earlier, 1), 'm', 3)} each come to about ${rounded(value, 'km', 0)}.`,
    },
  ],
};
