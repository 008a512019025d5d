import { equivalentLoad } from '#core/bearing/equivalent.ts';
import { loadFactors, type LoadFactors } from '#core/bearing/factors.ts';
import { lifeDistance_km } from '#core/bearing/life.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { lifeAt } from '../paper/rating.ts';
import { bare, deg, given, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly rating_kN: number;
  readonly radial_N: number;
  readonly thrust_N: number;
  readonly contactAngle_deg: Tabled;
  readonly radius_mm: number;
}

/** Contact angles that the standard's table has a line for. */
type Tabled = 25 | 30 | 35 | 40;

const factors = kept(({ contactAngle_deg }: Item): LoadFactors => factorsAt(contactAngle_deg));
const factorsAt = (contactAngle_deg: Tabled): LoadFactors => {
  const found = loadFactors('ball', si(contactAngle_deg, 'deg'));
  if (found.ok) return found.value;
  throw new RangeError(`${contactAngle_deg} degrees have no load factors`);
};
const rating = ({ rating_kN }: Item): number => si(rating_kN, 'kN');
const radial = ({ radial_N }: Item): number => si(radial_N, 'N');
const thrust = ({ thrust_N }: Item): number => si(thrust_N, 'N');
const load = (item: Item): number => equivalentLoad(radial(item), thrust(item), factors(item));
const way = (life: number, radius: number): number =>
  toSI(lifeDistance_km(fromSI(life, 'Mrev'), radius), 'km');

/** From two loads on a row to one, to revolutions, and from there to a distance. */
export const lifeFromLoad: Kind<Item> = {
  id: 'life-from-load',
  version: 1,
  title: 'From a load to a distance',
  lesson: 'rating-life',
  level: 2,
  draw: (random) => {
    const contactAngle_deg = random.pick<Tabled>([25, 30, 35, 40]);
    const radial_N = random.grid(2000, 6000, 50);
    // A thrust that counts: above the limit by a fifth up to four fifths of the radial load.
    const limit = factorsAt(contactAngle_deg).e * radial_N;
    const thrust_N = 50 * Math.round((limit + (radial_N * random.integer(20, 80)) / 100) / 50);
    const equivalent = equivalentLoad(radial_N, thrust_N, factorsAt(contactAngle_deg));
    return {
      rating_kN: Math.round((equivalent * random.integer(40, 72)) / 10_000),
      radial_N,
      thrust_N,
      contactAngle_deg,
      radius_mm: random.integer(285, 360),
    };
  },
  sound: ({ rating_kN }) => rating_kN <= 60,
  question: (item) => {
    const { rating_kN, radial_N, thrust_N, contactAngle_deg, radius_mm } = item;
    const { e, X, Y } = factors(item);
    return phrase`In a long bend one ball row of a wheel bearing carries ${given(radial_N, 'N')} radially and ${given(thrust_N, 'N')} of thrust. For its contact angle of ${deg(contactAngle_deg)} the table gives e = ${String(e)}, X = ${String(X)} and Y = ${String(Y)}. Its load rating is ${given(rating_kN, 'kN')}, the rolling radius of the wheel ${mm(radius_mm)}. How far would the row be rated to go if the bend never ended?`;
  },
  picture: (item) => ({
    scene: 'bars',
    title: 'Radial load and thrust',
    bars: [
      { says: given(item.radial_N, 'N').figure, value: item.radial_N },
      { says: given(item.thrust_N, 'N').figure, value: item.thrust_N },
    ],
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Equivalent load and load rating',
    bars: [
      { says: `load ${rounded(load(item), 'N', 0).figure}`, value: load(item) },
      { says: `rating ${given(item.rating_kN, 'kN').figure}`, value: rating(item) },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'load'
      ? wrongBar(
          'Radial load, thrust and equivalent load',
          [
            { says: 'radial', value: radial(item) },
            { says: 'thrust', value: thrust(item) },
            { says: 'equivalent', value: road.answer },
          ],
          road,
        )
      : road.part === 'life'
        ? wrongBar('Rating life', [{ says: 'life', value: road.answer }], road)
        : undefined,
  parts: [
    {
      id: 'load',
      quantity: OWN_QUANTITIES.equivalentLoad,
      unit: 'N',
      decimals: 0,
      label: 'Equivalent load of the row',
      value: load,
      possible: (value) => value > 0,
      hint: () =>
        phrase`First hold the thrust against e times the radial load. Is it below, so that it does not count, or above?`,
      slips: [
        {
          id: 'radial-alone',
          confuses: 'radial load',
          value: radial,
          text: () =>
            phrase`That is the radial load alone. It would be right for a thrust up to e times the radial load; here the thrust is above that limit and counts.`,
        },
        {
          id: 'sum',
          confuses: 'sum of the two loads',
          value: (item) => radial(item) + thrust(item),
          text: () =>
            phrase`That is the sum of the two loads. They press the balls in different directions, and the table says with which factors each of them counts.`,
        },
        {
          id: 'factors-swapped',
          confuses: 'X and Y',
          value: (item) => factors(item).Y * radial(item) + factors(item).X * thrust(item),
          text: () =>
            phrase`That has X and Y changed round. X goes with the radial load and Y with the thrust, which runs along the axis.`,
        },
        {
          id: 'whole-radial',
          confuses: 'factor X',
          value: (item) => radial(item) + factors(item).Y * thrust(item),
          text: () =>
            phrase`That leaves out the factor X. Up to the limit the radial load counts in full; above it only a part of it does, since the thrust spreads the load over all balls.`,
        },
      ],
      solution: (item, _earlier, value) => {
        const { e, X, Y } = factors(item);
        return phrase`The limit is ${String(e)} · ${given(item.radial_N, 'N')} = ${rounded(e * radial(item), 'N', 1)}, and the thrust is above it. So ${String(X)} · ${given(item.radial_N, 'N')} + ${String(Y)} · ${given(item.thrust_N, 'N')} = ${rounded(value, 'N', 1)}, the equivalent load.`;
      },
    },
    {
      id: 'ratio',
      quantity: OWN_QUANTITIES.loadRatio,
      unit: 'ratio',
      decimals: 2,
      label: 'Load rating over load, C/P',
      value: (item, earlier) => rating(item) / step(earlier, 0),
      possible: (value) => value > 0,
      hint: () => phrase`Both have to be in newtons before you divide. Which one is on top?`,
      slips: [
        {
          id: 'upside-down',
          confuses: 'upside down',
          value: (item, earlier) => step(earlier, 0) / rating(item),
          text: () =>
            phrase`That is upside down: load over rating. It says how heavily the row is loaded. The life equation has the rating on top, so that a high load makes a short life.`,
        },
        {
          id: 'radial-load',
          confuses: 'radial load',
          value: (item) => rating(item) / radial(item),
          text: () =>
            phrase`That divides by the radial load. It would be the equivalent load if there were no thrust to speak of; here the line above has made one load of the two.`,
        },
        {
          id: 'doubled-rating',
          confuses: 'two rows',
          value: (item, earlier) => (2 * rating(item)) / step(earlier, 0),
          text: () =>
            phrase`That takes the rating twice, for two rows. Here a single row is asked for, with its own rating and its own load.`,
        },
        {
          id: 'half-rating',
          confuses: 'half of the rating',
          value: (item, earlier) => rating(item) / 2 / step(earlier, 0),
          text: () =>
            phrase`That takes half of the rating. Half of it is where the life equation ends; in the equation itself stands all of it.`,
        },
      ],
      solution: ({ rating_kN }, earlier, value) =>
        phrase`In newtons above and below: ${given(1000 * rating_kN, 'N')} over ${rounded(step(earlier, 0), 'N', 0)} is ${bare(value, 2)}.`,
    },
    {
      id: 'life',
      quantity: OWN_QUANTITIES.rowLife,
      unit: 'Mrev',
      decimals: 0,
      label: 'Rating life of the row',
      value: (_item, earlier) => lifeAt('ball', step(earlier, 1)),
      possible: (value) => value > 0,
      hint: () => phrase`Raise the ratio to a power. Which exponent belongs to balls?`,
      slips: [
        {
          id: 'other-exponent',
          confuses: 'exponent',
          value: (_item, earlier) => lifeAt('roller', step(earlier, 1)),
          text: () =>
            phrase`That takes the exponent ten thirds, which belongs to rollers. This row has balls, so the exponent is three.`,
        },
        {
          id: 'squared',
          confuses: 'square',
          value: (_item, earlier) => toSI(step(earlier, 1) ** 2, 'Mrev'),
          text: () =>
            phrase`That is the square of the ratio, as for the energy of a moving car. Fatigue goes with a higher power: three for balls, ten thirds for rollers.`,
        },
        {
          id: 'in-step',
          confuses: 'ratio itself',
          value: (_item, earlier) => toSI(step(earlier, 1), 'Mrev'),
          text: () =>
            phrase`That is the ratio itself, as if life went in step with the load. The ratio has to be raised to its power first.`,
        },
        {
          id: 'times-exponent',
          confuses: 'times the exponent',
          value: (_item, earlier) => toSI(3 * step(earlier, 1), 'Mrev'),
          text: () =>
            phrase`That multiplies the ratio: it is times the exponent. The exponent says how often the ratio stands as a factor, not by how much it is multiplied.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`Balls have the exponent three. Raise ${bare(step(earlier, 1), 2)} to it, and ${rounded(value, 'Mrev', 0)} come out.`,
    },
    {
      id: 'way',
      quantity: OWN_QUANTITIES.lifeWay,
      unit: 'km',
      decimals: 0,
      label: 'The same as a distance',
      value: ({ radius_mm }, earlier) => way(step(earlier, 2), si(radius_mm, 'mm')),
      possible: (value) => value > 0,
      hint: () =>
        phrase`How far does the wheel roll in one turn? Then as many times as there are revolutions, and into kilometres.`,
      slips: [
        {
          id: 'radius-for-diameter',
          confuses: 'π times the radius',
          value: ({ radius_mm }, earlier) => way(step(earlier, 2), si(radius_mm, 'mm')) / 2,
          text: () =>
            phrase`That rolls π times the radius in one turn. The circumference is π times the diameter, which is twice as much.`,
        },
        {
          id: 'no-pi',
          confuses: 'radius for the circumference',
          value: ({ radius_mm }, earlier) =>
            way(step(earlier, 2), si(radius_mm, 'mm')) / (2 * Math.PI),
          text: () =>
            phrase`That takes the radius for the circumference: the wheel would move by its radius in a turn. It rolls off a whole circumference, 2π times as far.`,
        },
        {
          id: 'diameter-doubled',
          confuses: 'diameter',
          value: ({ radius_mm }, earlier) => 2 * way(step(earlier, 2), si(radius_mm, 'mm')),
          text: () =>
            phrase`That takes 2π times the diameter. With the diameter the circumference is once π; 2π belongs to the radius.`,
        },
        {
          id: 'thousand',
          confuses: 'a thousand',
          value: ({ radius_mm }, earlier) => way(step(earlier, 2), si(radius_mm, 'mm')) / 1000,
          text: () =>
            phrase`That is short by a thousand. A million revolutions times metres makes millions of metres, and a million metres are a thousand kilometres.`,
        },
      ],
      solution: ({ radius_mm }, earlier, value) =>
        phrase`One turn is 2π times ${given(radius_mm / 1000, 'm')}, which is ${rounded(2 * Math.PI * si(radius_mm, 'mm'), 'm', 3)}. A million turns are as many thousand kilometres; times ${bare(fromSI(step(earlier, 2), 'Mrev'), 0)} that makes ${rounded(value, 'km', 0)}, which nobody should quote closer than to the nearest thousand.`,
    },
  ],
};
