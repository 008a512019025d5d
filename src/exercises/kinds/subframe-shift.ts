import { inclinationOf, measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerAtRoad, cornerWithPivots } from '../paper/corner.ts';
import { camberRead, onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { computed, deg, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  readonly leftInclination_deg: number;
  readonly leftCamber_deg: number;
  readonly rightInclination_deg: number;
  readonly rightCamber_deg: number;
  /** Between the pivots. */
  readonly rise_mm: number;
}

const left = ({ leftInclination_deg }: Item): number => si(leftInclination_deg, 'deg');
const right = ({ rightInclination_deg }: Item): number => si(rightInclination_deg, 'deg');

/** How far outboard of the upper pivot the lower one sits with an inclination, in metres. */
function across({ rise_mm }: Item, inclination: number): number {
  const { axis } = cornerAtRoad({ inclination });
  return axis.point.y - atHeight(axis, si(rise_mm, 'mm')).y;
}

const leftAcross = kept((item: Item): number => across(item, left(item)));

/** What is left of an inclination once the lower pivot has gone inboard by a length. */
function inclinationMovedBack(item: Item, shift: number): number {
  const rise = si(item.rise_mm, 'mm');
  const lower = { out: leftAcross(item) - shift };
  return inclinationOf(axisThrough(lower, { up: rise }), 'left');
}

const included = kept(
  ({ leftInclination_deg, leftCamber_deg }: Item): number =>
    measure(cornerWithPivots(si(leftInclination_deg, 'deg'), si(leftCamber_deg, 'deg')))
      .includedAngle,
);

/** By how much farther out the left lower pivot sits than the right one. */
const apart = (item: Item, cross: number): number =>
  leftAcross(item) - across(item, left(item) - cross);

/** Both sides off, opposite ways: how far a subframe has gone. */
export const subframeShift: Kind<Item> = {
  id: 'subframe-shift',
  version: 1,
  title: 'Both sides off',
  lesson: 'alignment-sheet',
  level: 3,
  draw: (random) => {
    const leftInclination_deg = sheetAngle_deg(random, 9.5, 16);
    const rightInclination_deg = sheetAngle_deg(random, 9.5, 16);
    const meanCamber_deg = sheetAngle_deg(random, -1.4, -0.5);
    const included_deg = (leftInclination_deg + rightInclination_deg) / 2 + meanCamber_deg;
    const onLeft_deg = onSheet_deg(included_deg - leftInclination_deg);
    return {
      leftInclination_deg,
      leftCamber_deg: onLeft_deg,
      rightInclination_deg,
      // From the left one, so that both included angles stay equal after rounding.
      rightCamber_deg: onSheet_deg(leftInclination_deg + onLeft_deg - rightInclination_deg),
      rise_mm: random.integer(520, 680),
    };
  },
  sound: ({ leftInclination_deg, rightInclination_deg }) => {
    const apart_deg = Math.abs(leftInclination_deg - rightInclination_deg);
    return apart_deg >= 0.8 && apart_deg <= 4;
  },
  question: (item) =>
    phrase`A car on struts has an inclination of ${deg(item.leftInclination_deg)} and a camber of ${camberRead(item.leftCamber_deg)} on the left, ${deg(item.rightInclination_deg)} and ${camberRead(item.rightCamber_deg)} on the right. The included angles are equal, and both strut towers are where they should be. The pivots stand ${mm(item.rise_mm)} apart in height. The maker gives both sides the same inclination: how far has the subframe gone, and which way?`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerWithPivots(left(item), si(item.leftCamber_deg, 'deg')),
    measures: [
      { of: 'inclination', says: deg(item.leftInclination_deg).figure },
      { of: 'camber', says: deg(item.leftCamber_deg).figure },
    ],
  }),
  solved: (item) => {
    const lean = inclinationMovedBack(item, apart(item, left(item) - right(item)) / 2);
    return {
      ...{ scene: 'corner', view: 'front' },
      before: cornerWithPivots(left(item), si(item.leftCamber_deg, 'deg')),
      corner: cornerWithPivots(lean, included(item) - lean),
      measures: [
        { of: 'inclination', says: rounded(lean, 'deg', 2).figure },
        { of: 'camber', says: `camber ${rounded(included(item) - lean, 'deg', 2).figure}` },
      ],
    };
  },
  wrong: (item, road) =>
    road.part === 'camber-back'
      ? seenBeside({ of: 'camber', says: 'camber', view: 'front' }, road, (value) =>
          cornerWithPivots(included(item) - value, value),
        )
      : undefined,
  parts: [
    {
      id: 'cross',
      quantity: OWN_QUANTITIES.inclinationDifference,
      unit: 'deg',
      decimals: 2,
      label: 'Difference of the inclinations, left less right',
      value: (item) => left(item) - right(item),
      sum: 'exact',
      hint: () => phrase`Take the right inclination from the left one. Leave the camber aside.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (item) => right(item) - left(item),
          text: () =>
            phrase`Either left and right have changed places, or this is the difference of the cambers, which go the other way. Take the right inclination from the left one.`,
        },
        {
          id: 'added',
          confuses: 'sum of both inclinations',
          value: (item) => left(item) + right(item),
          text: () =>
            phrase`That is the sum of both inclinations. It stays nearly the same wherever the subframe goes, so it says nothing here. The difference does.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item) => (left(item) - right(item)) / 2,
          text: () =>
            phrase`That is half of the difference: by how much each side is off. It is worth knowing, but the whole difference is asked for here.`,
        },
        {
          id: 'mean',
          confuses: 'mean of both sides',
          value: (item) => (left(item) + right(item)) / 2,
          text: () =>
            phrase`That is the mean of both sides: about the inclination that each of them is meant to have. The difference between them is asked for.`,
        },
      ],
      solution: ({ leftInclination_deg, rightInclination_deg }, _earlier, value) =>
        phrase`Left less right: ${deg(leftInclination_deg)} − ${deg(rightInclination_deg)} = ${rounded(value, 'deg', 2)}, so it is larger on the ${sign(value, OWN_QUANTITIES.inclinationDifference)}.`,
    },
    {
      id: 'shift',
      quantity: OWN_QUANTITIES.subframeShift,
      unit: 'mm',
      decimals: 1,
      label: 'Shift of the subframe',
      value: (item, earlier) => apart(item, step(earlier, 0)) / 2,
      hint: () =>
        phrase`Step up times tangent says how far each lower pivot sits outboard of its upper one. What one side has gained the other has lost.`,
      slips: [
        {
          id: 'not-halved',
          confuses: 'difference between the sides',
          value: (item, earlier) => apart(item, step(earlier, 0)),
          text: () =>
            phrase`That is the difference between the sides. It would be the shift if one side had stayed. Both lower pivots hang on one subframe: one gains the shift, the other loses it.`,
        },
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (item, earlier) => -apart(item, step(earlier, 0)) / 2,
          text: () =>
            phrase`The size fits, but left and right have changed places. An axis leans more inboard where its lower pivot has gone outboard: the subframe sits toward the side with more inclination.`,
        },
        {
          id: 'one-side-alone',
          confuses: 'place of the lower pivot',
          value: (item) => leftAcross(item),
          text: () =>
            phrase`That is the place of the lower pivot on the left, counted from the upper one. It would be the shift if the axis were meant to stand upright. Most of it belongs there.`,
        },
        {
          id: 'per-cent',
          confuses: 'per cent',
          value: ({ rise_mm }, earlier) =>
            (si(rise_mm, 'mm') * fromSI(step(earlier, 0), 'deg')) / 200,
          text: () =>
            phrase`That takes the degrees of the difference for per cent. A slope in per cent may be multiplied like that. An angle has to go through its tangent first.`,
        },
      ],
      solution: (item, earlier, value) => {
        const { leftInclination_deg, rise_mm } = item;
        const rightInclination = left(item) - step(earlier, 0);
        const [onLeft, onRight] = [leftAcross(item), across(item, rightInclination)];
        return phrase`On the left the lower pivot sits ${mm(rise_mm)} · tan ${deg(leftInclination_deg)} = ${computed(onLeft, 'length')} outboard of the upper one, on the right ${mm(rise_mm)} · tan ${rounded(rightInclination, 'deg', 2)} = ${computed(onRight, 'length')}. One has gained what the other has lost, so half of the difference is the shift: ${computed(value, 'length')}, to the ${sign(value, OWN_QUANTITIES.subframeShift)}. A workshop measures it at the body before it loosens a bolt.`;
      },
    },
    {
      id: 'camber-back',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 2,
      label: 'Camber on the left with the subframe back',
      value: (item, earlier) => included(item) - inclinationMovedBack(item, step(earlier, 1)),
      hint: () =>
        phrase`The left lower pivot goes back by the shift, so the inclination changes. The included angle does not, and inclination and camber make it up.`,
      slips: [
        {
          id: 'as-measured',
          confuses: 'camber as it is measured',
          value: ({ leftCamber_deg }) => si(leftCamber_deg, 'deg'),
          text: () =>
            phrase`That is the camber as it is measured now. It would stay if the wheel did not follow the axis. It does: the two lean as one piece.`,
        },
        {
          id: 'wrong-way',
          confuses: 'way back',
          value: (item, earlier) => included(item) - inclinationMovedBack(item, -step(earlier, 1)),
          text: () =>
            phrase`That moves the subframe as far again the way it went. The way back makes the inclination more like that of the other side.`,
        },
        {
          id: 'twice-as-far',
          confuses: 'camber on the right',
          value: (item, earlier) =>
            included(item) - inclinationMovedBack(item, 2 * step(earlier, 1)),
          text: () =>
            phrase`That is the camber on the right as it is now. The left wheel would have it if the subframe went twice as far back. The two sides meet in the middle.`,
        },
        {
          id: 'change-alone',
          confuses: 'change alone',
          value: (item, earlier) => left(item) - inclinationMovedBack(item, step(earlier, 1)),
          text: () =>
            phrase`That is the change alone. It would be the camber afterwards if the wheel stood upright now. It has a camber already, so add the two.`,
        },
      ],
      solution: (item, earlier, value) => {
        const { leftInclination_deg, leftCamber_deg, rise_mm } = item;
        const back = inclinationMovedBack(item, step(earlier, 1));
        const [before, after] = [leftAcross(item), across(item, back)];
        const whole = rounded(included(item), 'deg', 2);
        return phrase`Back by the shift, the left lower pivot sits ${computed(before, 'length')} − ${term(computed(step(earlier, 1), 'length'))} = ${computed(after, 'length')} outboard. Over ${mm(rise_mm)} that is an inclination of ${rounded(back, 'deg', 2)}. The included angle stays: ${deg(leftInclination_deg)} + ${term(deg(leftCamber_deg))} = ${whole}, so the camber is ${whole} − ${rounded(back, 'deg', 2)} = ${rounded(value, 'deg', 2)}, and on the right it comes out the same.`;
      },
    },
  ],
};
