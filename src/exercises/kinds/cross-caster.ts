import type { Corner } from '#core/corner.ts';
import { atHeight } from '#core/line.ts';
import { fromSI } from '#core/units/convert.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad, cornerOnPivots } from '../paper/corner.ts';
import { sheetAngle_deg } from '../paper/sheet.ts';
import { computed, deg, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { oneSideSlips, rightLessLeft } from '../slips/one-side-slips.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  readonly leftCaster_deg: number;
  readonly rightCaster_deg: number;
  /** Between the pivots on the left. */
  readonly rise_mm: number;
}

const left = ({ leftCaster_deg }: Item): number => si(leftCaster_deg, 'deg');
const right = ({ rightCaster_deg }: Item): number => si(rightCaster_deg, 'deg');

/** How far rearward of the lower pivot the upper one sits with a caster, in metres. */
const place = ({ rise_mm }: Item, caster: number): number =>
  -atHeight(cornerAtRoad({ caster }).axis, si(rise_mm, 'mm')).x;

const placeNow = kept((item: Item): number => place(item, left(item)));

/** From where it sits now to where it would sit without the cross caster. */
const move = (item: Item, cross: number): number =>
  place(item, left(item) - cross) - placeNow(item);

/** The height of the lower pivot, which nobody asks for. */
const LOWER_UP = 0.2;

/** The left corner whose upper pivot sits so far rearward of the lower one. */
const onPivots = (item: Item, rearward: number): Corner =>
  cornerOnPivots({ up: LOWER_UP }, { ahead: -rearward, up: LOWER_UP + si(item.rise_mm, 'mm') });

/** From the casters of both sides to where the left upper pivot has to go. */
export const crossCaster: Kind<Item> = {
  id: 'cross-caster',
  version: 1,
  title: 'Two casters',
  lesson: 'alignment-sheet',
  level: 2,
  draw: (random) => ({
    leftCaster_deg: sheetAngle_deg(random, 1.5, 8),
    rightCaster_deg: sheetAngle_deg(random, 1.5, 8),
    rise_mm: random.integer(280, 680),
  }),
  sound: ({ leftCaster_deg, rightCaster_deg }) => {
    const apart_deg = Math.abs(leftCaster_deg - rightCaster_deg);
    return apart_deg >= 0.8 && apart_deg <= 4;
  },
  question: ({ leftCaster_deg, rightCaster_deg, rise_mm }) =>
    phrase`An alignment sheet gives a caster of ${deg(leftCaster_deg)} on the left and ${deg(rightCaster_deg)} on the right, both rearward. On the left the upper pivot sits ${mm(rise_mm)} above the lower one, and its mounting can be slid level along the car. The left caster is to be made equal to the right one.`,
  ...cornerPictures<Item>({
    view: 'side',
    pivots: true,
    wheelless: true,
    given: (item) => ({
      corner: onPivots(item, place(item, left(item))),
      measures: [
        { of: 'caster', says: deg(item.leftCaster_deg).figure },
        { of: 'pivotsUp', says: mm(item.rise_mm).figure },
      ],
    }),
    end: (item) => onPivots(item, place(item, right(item))),
    before: (item) => onPivots(item, place(item, left(item))),
    parts: {
      move: {
        of: 'caster',
        says: 'caster',
        to: (item, value) => onPivots(item, place(item, left(item)) + value),
        before: (item) => onPivots(item, place(item, left(item))),
      },
    },
  }),
  parts: [
    {
      id: 'cross',
      quantity: OWN_QUANTITIES.casterDifference,
      unit: 'deg',
      decimals: 2,
      label: 'Cross caster now, left less right',
      value: (item) => left(item) - right(item),
      sum: 'exact',
      hint: () => phrase`Take the right from the left. The sign says on which side there is more.`,
      slips: [
        rightLessLeft({ left, right }),
        {
          id: 'added',
          confuses: 'sum of both casters',
          value: (item) => left(item) + right(item),
          text: () =>
            phrase`That is the sum of both casters. Nothing in the car adds them up: each wheel has an axis of its own, and what pulls is the difference.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item) => (left(item) - right(item)) / 2,
          text: () =>
            phrase`That is half of the difference. It would be right if both sides were set to meet in the middle. The cross caster is the whole difference.`,
        },
        {
          id: 'left-alone',
          confuses: 'caster on the left',
          value: left,
          text: () =>
            phrase`That is the caster on the left by itself. It would be the cross caster if the right axis stood upright. The right one leans too, so take its caster away.`,
        },
      ],
      solution: ({ leftCaster_deg, rightCaster_deg }, _earlier, value) =>
        phrase`Left less right: ${deg(leftCaster_deg)} − ${deg(rightCaster_deg)} = ${rounded(value, 'deg', 2)}. There is more on the ${sign(value, OWN_QUANTITIES.casterDifference)}, and as far as caster goes the car tends the other way, toward the side with less.`,
    },
    {
      id: 'move',
      quantity: OWN_QUANTITIES.upperMove,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the left upper pivot',
      value: (item, earlier) => move(item, step(earlier, 0)),
      hint: () =>
        phrase`Step up times tangent says where a pivot sits with a caster. Where does the left one sit, and where would it sit with the caster of the right?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'rearward and forward',
          value: (item, earlier) => -move(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but rearward and forward have changed places. More caster needs the upper pivot farther rearward, less caster farther forward.`,
        },
        ...oneSideSlips<Item>({
          move: (item, earlier) => move(item, step(earlier, 0)),
          place: (item, earlier) => place(item, left(item) - step(earlier, 0)),
          moved: 'pivot',
          leans: 'rearward',
        }),
        {
          id: 'per-cent',
          confuses: 'per cent',
          value: ({ rise_mm }, earlier) =>
            (-si(rise_mm, 'mm') * fromSI(step(earlier, 0), 'deg')) / 100,
          text: () =>
            phrase`That takes the degrees of the difference for per cent. A slope in per cent may be multiplied like that. An angle has to go through its tangent first.`,
        },
      ],
      solution: (item, earlier, value) => {
        const { leftCaster_deg, rise_mm } = item;
        const goal = left(item) - step(earlier, 0);
        const [from, to] = [place(item, left(item)), place(item, goal)];
        return phrase`Now the pivot sits ${mm(rise_mm)} · tan ${deg(leftCaster_deg)} = ${computed(from, 'length')} rearward of the lower one; with the caster of the right it would be ${mm(rise_mm)} · tan ${rounded(goal, 'deg', 2)} = ${computed(to, 'length')}. So ${computed(to, 'length')} − ${term(computed(from, 'length'))} = ${computed(value, 'length')}: it moves ${sign(value, OWN_QUANTITIES.upperMove)}.`;
      },
    },
  ],
};
