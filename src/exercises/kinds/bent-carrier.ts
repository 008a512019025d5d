import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind, type Part } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { deg, phrase, rounded, si, sign, term, type Phrase } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly leftInclination_deg: number;
  readonly leftCamber_deg: number;
  readonly rightInclination_deg: number;
  readonly rightCamber_deg: number;
}

/** One wheel of the sheet. */
interface Wheel {
  readonly inclination_deg: number;
  readonly camber_deg: number;
}

const left = ({ leftInclination_deg, leftCamber_deg }: Item): Wheel => ({
  inclination_deg: leftInclination_deg,
  camber_deg: leftCamber_deg,
});

const right = ({ rightInclination_deg, rightCamber_deg }: Item): Wheel => ({
  inclination_deg: rightInclination_deg,
  camber_deg: rightCamber_deg,
});

const included = (inclination_deg: number, camber_deg: number): number =>
  measure(cornerWithPivots(si(inclination_deg, 'deg'), si(camber_deg, 'deg'))).includedAngle;

const camberGap = (item: Item): number => si(item.leftCamber_deg - item.rightCamber_deg, 'deg');
const inclinationGap = (item: Item): number =>
  si(item.leftInclination_deg - item.rightInclination_deg, 'deg');

const camberWritten = (camber_deg: number): Phrase =>
  phrase`${deg(camber_deg)} (top ${sign(camber_deg, QUANTITIES.camber)})`;

const SIDES = ['left', 'right'] as const;

/** Two included angles compared: what a bent part looks like on an alignment sheet. */
export const bentCarrier: Kind<Item> = {
  id: 'bent-carrier',
  version: 1,
  title: 'After the kerb',
  lesson: 'two-points',
  level: 3,
  draw: (random) => {
    const leftInclination_deg = random.grid(9, 16, 0.25);
    const leftCamber_deg = random.pick([-1, 1]) * random.grid(0.5, 2.5, 0.25);
    const rightCamber_deg = random.pick([-1, 1]) * random.grid(0.5, 2.5, 0.25);
    const difference_deg = random.pick([-1, 1]) * random.grid(1, 3.5, 0.25);
    return {
      leftInclination_deg,
      leftCamber_deg,
      rightInclination_deg: leftInclination_deg + leftCamber_deg - difference_deg - rightCamber_deg,
      rightCamber_deg,
    };
  },
  sound: ({ rightInclination_deg }) => rightInclination_deg >= 8 && rightInclination_deg <= 17,
  pattern: ({ leftCamber_deg, rightCamber_deg }) =>
    leftCamber_deg < 0 && rightCamber_deg < 0
      ? 'camber inboard'
      : leftCamber_deg > 0 && rightCamber_deg > 0
        ? 'camber outboard'
        : 'camber mixed',
  question: (item) =>
    phrase`After a knock against a kerb the alignment sheet shows, on the left, an inclination of ${deg(item.leftInclination_deg)} and a camber of ${camberWritten(item.leftCamber_deg)}; on the right, an inclination of ${deg(item.rightInclination_deg)} and a camber of ${camberWritten(item.rightCamber_deg)}. Which side has the larger included angle, and by how much?`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerWithPivots(si(item.leftInclination_deg, 'deg'), si(item.leftCamber_deg, 'deg')),
    measures: [
      { of: 'inclination', says: deg(item.leftInclination_deg).figure },
      { of: 'camber', says: deg(item.leftCamber_deg).figure },
    ],
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Included angles of both sides',
    bars: [left(item), right(item)].map(({ inclination_deg, camber_deg }, i) => {
      const value = included(inclination_deg, camber_deg);
      return { says: `${SIDES[i] ?? ''} ${rounded(value, 'deg', 2).figure}`, value };
    }),
  }),
  wrong: (item, road) => {
    const wheels = { 'included-left': left(item), 'included-right': right(item) };
    const wheel = wheels[road.part as keyof typeof wheels] as Wheel | undefined;
    const asked = { says: wheel ? 'included' : 'left less right', value: road.answer };
    return wrongBar(
      'Angles from the sheet, and what is asked for',
      wheel
        ? [
            { says: 'inclination', value: si(wheel.inclination_deg, 'deg') },
            { says: 'camber', value: si(wheel.camber_deg, 'deg') },
            asked,
          ]
        : [asked],
      road,
    );
  },
  parts: [
    includedPart('left', left, right),
    includedPart('right', right, left),
    {
      id: 'difference',
      quantity: OWN_QUANTITIES.includedDifference,
      unit: 'deg',
      decimals: 2,
      label: 'Difference of the included angles',
      value: (_item, earlier) => step(earlier, 0) - step(earlier, 1),
      sum: 'exact',
      hint: () => phrase`Compare the two included angles, not what they are made of.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (_item, earlier) => step(earlier, 1) - step(earlier, 0),
          text: () =>
            phrase`The size fits, but left and right have changed places. Look which of your two included angles is the larger.`,
        },
        {
          id: 'camber-alone',
          confuses: 'camber',
          value: camberGap,
          text: () =>
            phrase`That compares the camber alone. A difference there can come from a subframe that sits to one side, and then nothing is bent. Inclination would make up for it, so compare the sums.`,
        },
        {
          id: 'inclination-alone',
          confuses: 'inclination',
          value: inclinationGap,
          text: () =>
            phrase`That compares the inclination alone. A difference there can come from a subframe that sits to one side, and then nothing is bent. Camber would make up for it, so compare the sums.`,
        },
        {
          id: 'camber-taken-away',
          confuses: 'sign of the camber',
          value: (item) => inclinationGap(item) - camberGap(item),
          text: () =>
            phrase`That takes the camber away on both sides before comparing. It would be right if camber were counted positive inboard, like inclination. With the sign of the camber as it is on the sheet, add.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'deg', 2)} − ${term(rounded(step(earlier, 1), 'deg', 2))} = ${rounded(value, 'deg', 2)}: larger on the ${sign(value, OWN_QUANTITIES.includedDifference)}. Camber set at the top, or a subframe off to one side, cannot make such a difference; camber set at the carrier can, and so can a bent carrier or strut. Have both sides looked at by a workshop: what is bent is replaced, not straightened.`,
    },
  ],
};

/** The included angle of one side, with the other side's numbers as wrong roads. */
function includedPart(
  side: 'left' | 'right',
  wheel: (item: Item) => Wheel,
  other: (item: Item) => Wheel,
): Part<Item> {
  return {
    id: `included-${side}`,
    quantity: QUANTITIES.includedAngle,
    unit: 'deg',
    decimals: 2,
    label: `Included angle on the ${side}`,
    value: (item) => included(wheel(item).inclination_deg, wheel(item).camber_deg),
    sum: 'exact',
    hint: () =>
      phrase`From the axis to upright, and from upright on to the plane of the wheel: two angles of one side, each with its sign.`,
    slips: [
      {
        id: 'taken-away',
        confuses: 'sign of the camber',
        value: (item) => si(wheel(item).inclination_deg - wheel(item).camber_deg, 'deg'),
        text: () =>
          phrase`That takes the camber away. It would be right if the sign of the camber were the other one. The included angle is the sum, with each sign as it stands on the sheet.`,
      },
      {
        id: 'camber-left-out',
        confuses: 'inclination',
        value: (item) => si(wheel(item).inclination_deg, 'deg'),
        text: () =>
          phrase`That is the inclination, from upright to the axis. It would be the included angle of a wheel without camber. This one has some, and it belongs to the sum.`,
      },
      {
        id: 'camber-of-the-other-side',
        confuses: 'camber of the other side',
        value: (item) => si(wheel(item).inclination_deg + other(item).camber_deg, 'deg'),
        text: () =>
          phrase`That has the camber of the other side in it. An included angle belongs to one carrier: take both numbers from the ${side}.`,
      },
      {
        id: 'inclination-of-the-other-side',
        confuses: 'inclination of the other side',
        value: (item) => si(other(item).inclination_deg + wheel(item).camber_deg, 'deg'),
        text: () =>
          phrase`That has the inclination of the other side in it. An included angle belongs to one carrier: take both numbers from the ${side}.`,
      },
    ],
    solution: (item, _earlier, value) => {
      const { inclination_deg, camber_deg } = wheel(item);
      return phrase`On the ${side}: ${deg(inclination_deg)} + ${term(deg(camber_deg))} = ${rounded(value, 'deg', 2)}.`;
    },
  };
}
