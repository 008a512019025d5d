import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { mm, phrase, rounded, si, sign, term, type Phrase } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  /** How far the two front corners of the body have risen. */
  readonly left_mm: number;
  readonly right_mm: number;
  readonly way: 'left' | 'right';
}

const left = ({ left_mm }: Item): number => si(left_mm, 'mm');
const right = ({ right_mm }: Item): number => si(right_mm, 'mm');

const moved = (lift_mm: number): Phrase =>
  phrase`${sign(lift_mm, { ...QUANTITIES.lift, positive: 'risen', negative: 'sunk' })} by ${mm(Math.abs(lift_mm))}`;

/** Two corners of one vehicle on full lock: the front tips, and its middle rises. */
export const frontOnLock: Kind<Item> = {
  id: 'front-on-lock',
  version: 1,
  title: 'One corner up, one corner down',
  lesson: 'the-wheel-turns',
  level: 1,
  draw: (random) => {
    // Tenths of a millimetre, as whole numbers until the end.
    const middle = random.integer(13, 80);
    const eachWay = random.integer(28, 160);
    const way = random.pick<Item['way']>(['left', 'right']);
    const [up, down] = [(middle + eachWay) / 10, (middle - eachWay) / 10];
    return { left_mm: way === 'left' ? up : down, right_mm: way === 'left' ? down : up, way };
  },
  // From a saloon with a few millimetres to a kart with many.
  sound: ({ left_mm, right_mm }) => Math.min(left_mm, right_mm) < -0.5,
  pattern: ({ way }) => `to the ${way}`,
  question: ({ left_mm, right_mm, way }) =>
    phrase`A vehicle stands level with its front wheels on turn plates. They are turned to full lock to the ${way}, and the heights of the body above them are measured again: the left front corner has ${moved(left_mm)}, the right front corner has ${moved(right_mm)}. By how much has the front tipped, and what has its middle done?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Lift of the left front corner and of the right one',
    bars: [item.left_mm, item.right_mm].map((value) => ({
      says: mm(Math.abs(value)).figure,
      value,
    })),
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Lift of the left front corner, of the middle, and of the right front corner',
    bars: [
      { says: 'left', value: left(item) },
      {
        says: `middle ${rounded((left(item) + right(item)) / 2, 'mm', 1).figure}`,
        value: (left(item) + right(item)) / 2,
      },
      { says: 'right', value: right(item) },
    ],
  }),
  wrong: (item, road) =>
    wrongBar(
      'Lift of both corners, and what is asked for',
      [
        { says: 'left', value: left(item) },
        { says: 'right', value: right(item) },
        { says: road.part === 'tilt' ? 'left less right' : 'middle', value: road.answer },
      ],
      road,
    ),
  parts: [
    {
      id: 'tilt',
      quantity: OWN_QUANTITIES.frontTilt,
      unit: 'mm',
      decimals: 1,
      label: 'Difference in height of the two corners, left less right',
      value: (item) => left(item) - right(item),
      sum: 'exact',
      hint: () =>
        phrase`Risen is positive, sunk is negative. The corners were level before: how far apart in height are they now?`,
      slips: [
        {
          id: 'sign-lost',
          confuses: 'risen and sunk',
          value: (item) => left(item) + right(item),
          text: () =>
            phrase`That takes one size from the other, as if both corners had risen. It mixes up risen and sunk: one went up and one went down, so the gap between them is both together.`,
        },
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (item) => right(item) - left(item),
          text: () =>
            phrase`The size fits, but left and right have changed places. The word says which corner stands higher.`,
        },
        {
          id: 'halved',
          confuses: 'half of the gap',
          value: (item) => (left(item) - right(item)) / 2,
          text: () =>
            phrase`That is half of the gap, counted from the middle of the front. It is wanted in the next step; here both corners are held against each other.`,
        },
        {
          id: 'one-corner-for-both',
          confuses: 'one corner for both',
          value: (item) => (item.way === 'left' ? 2 * left(item) : -2 * right(item)),
          text: () =>
            phrase`That takes one corner for both, as if the other had sunk by as much as this one rose. It has sunk by less, since the middle of the front rises as well.`,
        },
      ],
      solution: ({ left_mm, right_mm }, _earlier, value) =>
        phrase`Left less right, each with its sign: ${mm(left_mm)} − ${term(mm(right_mm))} = ${rounded(value, 'mm', 1)}, higher on the ${sign(value, OWN_QUANTITIES.frontTilt)}.`,
    },
    {
      id: 'middle',
      quantity: QUANTITIES.frontLift,
      unit: 'mm',
      decimals: 1,
      label: 'Lift of the middle of the front',
      value: (item, earlier) => right(item) + step(earlier, 0) / 2,
      sum: 'rounded',
      hint: () =>
        phrase`The middle lies halfway between the corners: from the right one, half of the difference.`,
      slips: [
        {
          id: 'half-of-the-gap',
          confuses: 'half of the gap alone',
          value: (_item, earlier) => step(earlier, 0) / 2,
          text: () =>
            phrase`That is half of the gap alone, counted from the right corner. It would be the answer if the right corner had stayed where it was. It has moved too: start from there.`,
        },
        {
          id: 'not-halved',
          confuses: 'sum of both corners',
          value: (item, earlier) => 2 * right(item) + step(earlier, 0),
          text: () =>
            phrase`That is the sum of both corners. The middle of the front goes by the mean of the two, which is half of it.`,
        },
        {
          id: 'turned-round',
          confuses: 'raised and lowered',
          value: (item, earlier) => -(right(item) + step(earlier, 0) / 2),
          text: () =>
            phrase`The size fits, but raised and lowered have changed places. The corner that rose went farther than the one that sank, so the middle has risen.`,
        },
        {
          id: 'from-the-other-corner',
          confuses: 'other corner',
          value: (item, earlier) => left(item) + step(earlier, 0) / 2,
          text: () =>
            phrase`That starts from the other corner. Left less right leads from the right corner to the left one, so half of it is added to the right corner.`,
        },
      ],
      solution: ({ right_mm }, earlier, value) =>
        phrase`From the right corner, half of the difference: ${mm(right_mm)} + ${term(rounded(step(earlier, 0) / 2, 'mm', 2))} = ${rounded(value, 'mm', 1)}. The middle of the front has been lifted, as it is on the other lock, and the weight on it wants down again: back to straight ahead.`,
    },
  ],
};
