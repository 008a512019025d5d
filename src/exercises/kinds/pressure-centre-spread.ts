import { pressureCentreSpread as spreadOf } from '#core/bearing/pressure-centre.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { deg, given, mm, phrase, rounded, si } from '../phrase.ts';
import type { ContactPicture } from '../pictures/part-pictures.ts';

interface Item {
  readonly pitch_mm: number;
  readonly diameter_mm: number;
  readonly angle_deg: number;
}

const pitch = ({ pitch_mm }: Item): number => si(pitch_mm, 'mm');
const diameter = ({ diameter_mm }: Item): number => si(diameter_mm, 'mm');
const angle = ({ angle_deg }: Item): number => si(angle_deg, 'deg');
/** From a row out to its pressure centre. */
const reach = (item: Item): number =>
  (spreadOf(pitch(item), diameter(item), angle(item)) - pitch(item)) / 2;

const cutOpen = (item: Item): ContactPicture => ({
  scene: 'contact',
  rows_mm: item.pitch_mm,
  circle_mm: item.diameter_mm,
  angle: angle(item),
  measures: [],
  isSolved: false,
});

/** Where the contact lines meet the spin axis, and how far apart the rows stand for all that comes after. */
export const pressureCentreSpread: Kind<Item> = {
  id: 'pressure-centre-spread',
  version: 1,
  title: 'Wider than its rows',
  lesson: 'load-line-and-rows',
  level: 1,
  draw: (random) => ({
    pitch_mm: random.integer(20, 40),
    diameter_mm: random.integer(44, 70),
    angle_deg: random.grid(25, 40, 1),
  }),
  sound: () => true,
  question: ({ pitch_mm, diameter_mm, angle_deg }) =>
    phrase`In the drawing of a hub bearing with two ball rows back to back, the rows are ${mm(pitch_mm)} apart, the circle of the ball centres is ${mm(diameter_mm)} across and the contact angle is ${deg(angle_deg)}. Where does the hub stand?`,
  picture: (item) => ({
    ...cutOpen(item),
    measures: [
      { of: 'rows', says: mm(item.pitch_mm).figure },
      { of: 'circle', says: mm(item.diameter_mm).figure },
      { of: 'angle', says: deg(item.angle_deg).figure },
    ],
  }),
  solved: (item) => ({
    ...cutOpen(item),
    isSolved: true,
    measures: [
      { of: 'rows', says: mm(item.pitch_mm).figure },
      {
        of: 'spread',
        says: `spread ${rounded(pitch(item) + 2 * reach(item), 'mm', 1).figure}`,
      },
    ],
  }),
  wrong: (item, { part, value, answer, earlier }) => {
    const of = part === 'reach' ? 'reach' : 'spread';
    if (Math.max(value, answer) > 0.12) return undefined;
    const own = earlier.slice(0, 1).map((one) => Math.atan((2 * one) / diameter(item)));
    return {
      ...cutOpen(item),
      angle: own[0] ?? angle(item),
      isSolved: true,
      measures: [{ of, says: of }],
      wrong: of === 'reach' ? { reach_mm: 1000 * value } : { spread_mm: 1000 * value },
    };
  },
  parts: [
    {
      id: 'reach',
      quantity: OWN_QUANTITIES.contactReach,
      unit: 'mm',
      decimals: 1,
      label: 'From a row, along the spin axis, to its pressure centre',
      value: reach,
      possible: (value) => value > 0,
      hint: () =>
        phrase`Draw the triangle from a ball’s centre down to the spin axis and along it to the pressure centre. Which side of it is known, and where is the contact angle?`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * reach(item),
          text: () =>
            phrase`That takes the pitch diameter. The spin axis runs through the middle of the circle, so from a ball’s centre down to it is half of the diameter.`,
        },
        {
          id: 'sine',
          confuses: 'sine',
          value: (item) => (diameter(item) / 2) * Math.sin(angle(item)),
          text: () =>
            phrase`That takes the sine of the contact angle. It would be right if the radius lay along the contact line; here it stands square to the spin axis, and the tangent belongs to that.`,
        },
        {
          id: 'upside-down',
          confuses: 'angle to the spin axis',
          value: (item) => diameter(item) / 2 / Math.tan(angle(item)),
          text: () =>
            phrase`That takes the contact angle for the angle to the spin axis. It is counted from the line square to the axis: a larger contact angle reaches farther out.`,
        },
        {
          id: 'calculator-on-radians',
          confuses: 'radians',
          value: (item) => (diameter(item) / 2) * Math.tan(item.angle_deg),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the contact angle here is in degrees. Set it to DEG and take the tangent again.`,
        },
      ],
      solution: ({ diameter_mm, angle_deg }, _earlier, value) =>
        phrase`Half the pitch diameter times the tangent of the contact angle: ${given(diameter_mm / 2, 'mm')} · tan ${deg(angle_deg)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'spread',
      quantity: QUANTITIES.pressureCentreSpread,
      unit: 'mm',
      decimals: 1,
      label: 'Pressure-centre spread',
      value: (item, earlier) => pitch(item) + 2 * step(earlier, 0),
      sum: 'rounded',
      hint: () =>
        phrase`Back to back, the contact lines lean apart on their way to the spin axis. Begin with the row spacing: what comes on at either end?`,
      slips: [
        {
          id: 'one-end',
          confuses: 'one end',
          value: (item, earlier) => pitch(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the reach at one end only. Either row has its own pressure centre, one beyond it outboard and one beyond it inboard.`,
        },
        {
          id: 'face-to-face',
          confuses: 'face to face',
          value: (item, earlier) => Math.abs(pitch(item) - 2 * step(earlier, 0)),
          text: () =>
            phrase`That is the spread of rows face to face, whose contact lines lean toward each other. Back to back they lean apart, and the reach comes on top of the row spacing.`,
        },
        {
          id: 'rows-alone',
          confuses: 'row spacing',
          value: (item) => pitch(item),
          text: () =>
            phrase`That is the row spacing alone, as with deep-groove balls, which press straight up and down. These press slantwise, and their lines meet the spin axis farther out.`,
        },
        {
          id: 'reaches-alone',
          confuses: 'distance between the rows',
          value: (_item, earlier) => 2 * step(earlier, 0),
          text: () =>
            phrase`That leaves out the distance between the rows. It would be so if both rows stood in one plane; the row spacing lies between the two reaches.`,
        },
      ],
      solution: ({ pitch_mm }, earlier, value) =>
        phrase`The row spacing, and the reach at either end: ${mm(pitch_mm)} + ${rounded(2 * step(earlier, 0), 'mm', 2)} = ${rounded(value, 'mm', 1)}. So far apart stand the two points that hold the hub.`,
    },
  ],
};
