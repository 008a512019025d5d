import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { camberRead, onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { deg, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  /** As the maker gives it for the carrier. */
  readonly includedAngle_deg: number;
  readonly inclination_deg: number;
  readonly camber_deg: number;
}

const included = ({ includedAngle_deg }: Item): number => si(includedAngle_deg, 'deg');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');

/** From a carrier's included angle to the camber it should show, and so to what is bent. */
export const camberIfStraight: Kind<Item> = {
  id: 'camber-if-straight',
  version: 1,
  title: 'What the wheel should show',
  lesson: 'alignment-sheet',
  level: 1,
  draw: (random) => {
    const inclination_deg = sheetAngle_deg(random, 9, 16);
    const expected_deg = random.pick([-1, 1]) * sheetAngle_deg(random, 0.4, 3.5);
    const bent_deg = random.pick([-1, 1]) * sheetAngle_deg(random, 0.6, 4);
    return {
      includedAngle_deg: onSheet_deg(inclination_deg + expected_deg),
      inclination_deg,
      camber_deg: onSheet_deg(expected_deg + bent_deg),
    };
  },
  sound: ({ camber_deg }) => Math.abs(camber_deg) >= 0.4 && Math.abs(camber_deg) <= 5,
  question: (item) =>
    phrase`A maker gives an included angle of ${deg(item.includedAngle_deg)} for a carrier. On the car, the sheet shows an inclination of ${deg(item.inclination_deg)} and a camber of ${camberRead(item.camber_deg)}. What camber should the wheel have with this inclination if nothing were bent, and how much is bent in?`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerWithPivots(inclination(item), camber(item)),
    measures: [
      { of: 'inclination', says: deg(item.inclination_deg).figure },
      { of: 'camber', says: deg(item.camber_deg).figure },
    ],
  }),
  solved: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    before: cornerWithPivots(inclination(item), camber(item)),
    corner: cornerWithPivots(inclination(item), included(item) - inclination(item)),
    measures: [
      { of: 'inclination', says: deg(item.inclination_deg).figure },
      {
        of: 'camber',
        says: `camber ${rounded(included(item) - inclination(item), 'deg', 2).figure}`,
      },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'expected'
      ? seenBeside({ of: 'camber', says: 'camber', view: 'front' }, road, (value) =>
          cornerWithPivots(inclination(item), value),
        )
      : undefined,
  parts: [
    {
      id: 'expected',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 2,
      label: 'Camber if nothing were bent',
      value: (item) => included(item) - inclination(item),
      sum: 'exact',
      hint: () =>
        phrase`Inclination and camber add up to the included angle. Two of the three are given.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'included angle and inclination',
          value: (item) => inclination(item) - included(item),
          text: () =>
            phrase`The size fits, but included angle and inclination have changed places. The camber is what has to be added to the inclination, so take the inclination away.`,
        },
        {
          id: 'added',
          confuses: 'sum of the two',
          value: (item) => included(item) + inclination(item),
          text: () =>
            phrase`That is the sum of the two. It would be right if the included angle were what is still missing. It is the whole, and the inclination is part of it.`,
        },
        {
          id: 'as-measured',
          confuses: 'camber as it is measured',
          value: camber,
          text: () =>
            phrase`That is the camber as it is measured. It would be the answer if nothing were bent. Work out what it should be from the other two, and leave it aside.`,
        },
        {
          id: 'shared',
          confuses: 'half of the rest',
          value: (item) => (included(item) - inclination(item)) / 2,
          text: () =>
            phrase`That is half of the rest. It would be right if two wheels shared it. The included angle belongs to one carrier, and the rest of it to one wheel.`,
        },
      ],
      solution: ({ includedAngle_deg, inclination_deg }, _earlier, value) =>
        phrase`${deg(includedAngle_deg)} − ${deg(inclination_deg)} = ${rounded(value, 'deg', 2)}: with this inclination the top of the wheel should lean ${sign(value, QUANTITIES.camber)}.`,
    },
    {
      id: 'bent-in',
      quantity: OWN_QUANTITIES.camberBentIn,
      unit: 'deg',
      decimals: 2,
      label: 'Camber that is bent in',
      value: (item, earlier) => camber(item) - step(earlier, 0),
      sum: 'exact',
      hint: () => phrase`What the sheet shows, less what it should show.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'shown and should',
          value: (item, earlier) => step(earlier, 0) - camber(item),
          text: () =>
            phrase`The size fits, but shown and should have changed places. What is bent in is what there is less what there should be.`,
        },
        {
          id: 'added',
          confuses: 'sign of the camber',
          value: (item, earlier) => camber(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the two: the sign of the camber that should be there has been lost. It would be right if that were counted the other way round. Take it away.`,
        },
        {
          id: 'measured-alone',
          confuses: 'camber as it is measured',
          value: camber,
          text: () =>
            phrase`That is the camber as it is measured. All of it would be bent in if the wheel should stand upright with this inclination. Part of it belongs there.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item, earlier) => (camber(item) - step(earlier, 0)) / 2,
          text: () =>
            phrase`That is half of the difference, as if carrier and axis shared it. The axis has been taken care of already: all of the difference is in the bent part.`,
        },
      ],
      solution: ({ camber_deg }, earlier, value) =>
        phrase`${deg(camber_deg)} − ${term(rounded(step(earlier, 0), 'deg', 2))} = ${rounded(value, 'deg', 2)}: something between axis and wheel is bent, the top of the wheel ${sign(value, OWN_QUANTITIES.camberBentIn)}. Carrier and strut are looked at, and what is bent is replaced.`,
    },
  ],
};
