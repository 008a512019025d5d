import type { RowKind } from '#core/bearing/factors.ts';
import { lifeExponent } from '#core/bearing/life.ts';
import { reliabilityFactor } from '#core/bearing/reliability.ts';
import { fromSI } from '#core/units/convert.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { EXPONENT, otherKind, ROLLING } from '../paper/rating.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly kind: RowKind;
  readonly way_km: number;
  readonly radius_mm: number;
  readonly rating_kN: number;
}

const rating = ({ rating_kN }: Item): number => si(rating_kN, 'kN');
const turns = ({ way_km, radius_mm }: Item): number =>
  si(way_km, 'km') / (2 * Math.PI * si(radius_mm, 'mm'));
/** C/P for a life in revolutions. */
const ratioFor = (kind: RowKind, life: number): number =>
  fromSI(life, 'Mrev') ** (1 / lifeExponent(kind));

/** Backwards: the load under which a row is rated for a wanted distance. */
export const loadForLife: Kind<Item> = {
  id: 'load-for-life',
  version: 1,
  title: 'The load for a wanted life',
  lesson: 'rating-life',
  level: 3,
  draw: (random) => ({
    kind: random.pick<RowKind>(['ball', 'roller']),
    way_km: random.grid(150_000, 500_000, 10_000),
    radius_mm: random.integer(285, 360),
    rating_kN: random.integer(24, 64),
  }),
  sound: () => true,
  pattern: ({ kind }) => kind,
  question: ({ kind, way_km, radius_mm, rating_kN }) =>
    phrase`A row with ${ROLLING[kind]} is to be rated for ${given(way_km, 'km')}. The rolling radius is ${mm(radius_mm)}, the load rating of the row ${given(rating_kN, 'kN')}. How large may its mean equivalent load be?`,
  solved: (item) => ({
    scene: 'bars',
    title: 'Highest mean load and load rating',
    bars: [
      {
        says: `load ${rounded(rating(item) / ratioFor(item.kind, turns(item)), 'N', 0).figure}`,
        value: rating(item) / ratioFor(item.kind, turns(item)),
      },
      { says: `rating ${given(item.rating_kN, 'kN').figure}`, value: rating(item) },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'load'
      ? wrongBar(
          'Load and load rating',
          [
            { says: 'load', value: road.answer },
            { says: 'rating', value: rating(item) },
          ],
          road,
        )
      : undefined,
  parts: [
    {
      id: 'turns',
      quantity: OWN_QUANTITIES.rowLife,
      unit: 'Mrev',
      decimals: 1,
      label: 'Revolutions on that distance',
      value: turns,
      possible: (value) => value > 0,
      hint: () =>
        phrase`How far does the wheel roll in one turn? The distance in metres over that.`,
      slips: [
        {
          id: 'half-circumference',
          confuses: 'π times the radius',
          value: (item) => 2 * turns(item),
          text: () =>
            phrase`That rolls π times the radius in one turn, half of the circumference, and so needs twice the turns. With the radius it is 2π.`,
        },
        {
          id: 'no-pi',
          confuses: 'radius for the circumference',
          value: (item) => 2 * Math.PI * turns(item),
          text: () =>
            phrase`That takes the radius for the circumference. In one turn the wheel rolls 2π radii, so it needs that many fewer turns.`,
        },
        {
          id: 'double-circumference',
          confuses: 'diameter for the radius',
          value: (item) => turns(item) / 2,
          text: () =>
            phrase`That takes the diameter for the radius: a wheel twice as large makes half of the turns. The rolling radius is given.`,
        },
        {
          id: 'thousand',
          confuses: 'a thousand',
          value: (item) => turns(item) / 1000,
          text: () =>
            phrase`That is out by a thousand. Kilometres into metres first; then revolutions come out, and a million of them are one of the unit asked for.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`One turn: 2 · 3.1416 · ${given(item.radius_mm / 1000, 'm')} = ${rounded(2 * Math.PI * si(item.radius_mm, 'mm'), 'm', 3)}, which is the circumference. The distance of ${given(1000 * item.way_km, 'm')} over it makes ${rounded(value, 'Mrev', 1)}.`,
    },
    {
      id: 'ratio',
      quantity: OWN_QUANTITIES.loadRatio,
      unit: 'ratio',
      decimals: 2,
      label: 'Load rating over load that this takes',
      value: ({ kind }, earlier) => ratioFor(kind, step(earlier, 0)),
      possible: (value) => value > 0,
      hint: ({ kind }) =>
        phrase`The life equation read backwards: undo the power. Which root belongs to the exponent ${EXPONENT[kind]}?`,
      slips: [
        {
          id: 'square-root',
          confuses: 'square root',
          value: (_item, earlier) => fromSI(step(earlier, 0), 'Mrev') ** 0.5,
          text: () =>
            phrase`That is the square root. It would undo a square; the life equation has a higher power, three for balls and ten thirds for rollers.`,
        },
        {
          id: 'other-exponent',
          confuses: 'exponent',
          value: ({ kind }, earlier) => ratioFor(otherKind(kind), step(earlier, 0)),
          text: ({ kind }) =>
            phrase`That undoes the exponent of ${ROLLING[otherKind(kind)]}. This row has ${ROLLING[kind]}, so raise to one over ${EXPONENT[kind]}.`,
        },
        {
          id: 'divided',
          confuses: 'divided by the exponent',
          value: ({ kind }, earlier) => fromSI(step(earlier, 0), 'Mrev') / lifeExponent(kind),
          text: () =>
            phrase`That is the life divided by the exponent. A power is undone by a root: raise the life, in millions, to one over the exponent.`,
        },
        {
          id: 'not-undone',
          confuses: 'life itself',
          value: (_item, earlier) => fromSI(step(earlier, 0), 'Mrev'),
          text: () =>
            phrase`That is the life itself. It would be the ratio if life went in step with the load; the power has to be undone first.`,
        },
      ],
      solution: ({ kind }, earlier, value) =>
        phrase`The life in millions, ${bare(fromSI(step(earlier, 0), 'Mrev'), 1)}, raised to one over ${EXPONENT[kind]}: ${bare(value, 2)}.`,
    },
    {
      id: 'load',
      quantity: OWN_QUANTITIES.mostLoad,
      unit: 'N',
      decimals: 0,
      label: 'Highest mean equivalent load',
      value: (item, earlier) => rating(item) / step(earlier, 1),
      possible: (value) => value > 0,
      hint: () => phrase`The ratio says how many times the load goes into the rating.`,
      slips: [
        {
          id: 'multiplied',
          confuses: 'multiplies',
          value: (item, earlier) => rating(item) * step(earlier, 1),
          text: () =>
            phrase`That multiplies rating and ratio, and the load would be far above the rating. The rating is so many times the load: divide.`,
        },
        {
          id: 'kilonewtons',
          confuses: 'kilonewtons',
          value: (item, earlier) => rating(item) / 1000 / step(earlier, 1),
          text: () =>
            phrase`That has the number of kilonewtons for newtons. Turn the rating into newtons first, and newtons come out.`,
        },
        {
          id: 'half-of-c',
          confuses: 'half of the load rating',
          value: (item) => rating(item) / 2,
          text: () =>
            phrase`That is half of the load rating, where the life equation ends. A row loaded so is rated for a few million revolutions only; the wanted distance takes far more.`,
        },
        {
          id: 'surer',
          confuses: 'ninety-nine of a hundred',
          value: (item, earlier) =>
            (rating(item) / step(earlier, 1)) *
            reliabilityFactor(0.99) ** (1 / lifeExponent(item.kind)),
          text: () =>
            phrase`That is the load under which ninety-nine of a hundred reach that distance. Rating life itself is about ninety of a hundred, without that factor.`,
        },
      ],
      solution: ({ rating_kN }, earlier, value) =>
        phrase`${given(1000 * rating_kN, 'N')} over ${bare(step(earlier, 1), 2)} is ${rounded(value, 'N', 0)}. Not a limit at which anything breaks: the load under which ninety of a hundred such rows reach that distance.`,
    },
  ],
};
