import type { Corner } from '#core/corner.ts';
import { atHeight } from '#core/line.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad, cornerWithPivots } from '../paper/corner.ts';
import { camberRead, onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { computed, deg, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { oneSideSlips, rightLessLeft } from '../slips/one-side-slips.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  readonly leftCamber_deg: number;
  readonly rightCamber_deg: number;
  /** The cross camber that is to be set. */
  readonly wanted_deg: number;
  /** Of the left axis, and its pivots' distance in height. */
  readonly leftInclination_deg: number;
  readonly rise_mm: number;
}

const left = ({ leftCamber_deg }: Item): number => si(leftCamber_deg, 'deg');
const right = ({ rightCamber_deg }: Item): number => si(rightCamber_deg, 'deg');
const wanted = ({ wanted_deg }: Item): number => si(wanted_deg, 'deg');
const inclination = ({ leftInclination_deg }: Item): number => si(leftInclination_deg, 'deg');

/** How far inboard of the lower pivot the upper one sits with an inclination, in metres. */
function place({ rise_mm }: Item, lean: number): number {
  const { axis } = cornerAtRoad({ inclination: lean });
  return axis.point.y - atHeight(axis, si(rise_mm, 'mm')).y;
}

const placeNow = kept((item: Item): number => place(item, inclination(item)));

/** How far inboard the upper pivot has to go for a change of camber: the axis takes the wheel along. */
const move = (item: Item, change: number): number =>
  place(item, inclination(item) - change) - placeNow(item);

/** What the left camber has to change by. */
const changeOf = (item: Item): number => wanted(item) - (left(item) - right(item));

/** The left wheel leaned by so much, its axis with it. */
const leaned = (item: Item, change: number): Corner =>
  cornerWithPivots(inclination(item) - change, left(item) + change);

/** Left less right, and how far the top of the left strut has to go for another difference. */
export const crossCamber: Kind<Item> = {
  id: 'cross-camber',
  version: 1,
  title: 'Left less right',
  lesson: 'alignment-sheet',
  level: 2,
  draw: (random) => {
    const rightCamber_deg = sheetAngle_deg(random, -1.7, -0.5);
    const wanted_deg = random.pick([-1, 1]) * sheetAngle_deg(random, 0.4, 0.9);
    const apart_deg = sheetAngle_deg(random, Math.abs(wanted_deg) + 0.8, 3);
    return {
      leftCamber_deg: onSheet_deg(rightCamber_deg + random.pick([-1, 1]) * apart_deg),
      rightCamber_deg,
      wanted_deg,
      leftInclination_deg: sheetAngle_deg(random, 10, 15.5),
      rise_mm: random.integer(480, 680),
    };
  },
  sound: ({ leftCamber_deg }) => leftCamber_deg >= -3.5 && Math.abs(leftCamber_deg) >= 0.4,
  question: ({ leftCamber_deg, rightCamber_deg, wanted_deg, leftInclination_deg, rise_mm }) =>
    phrase`An alignment sheet gives a camber of ${camberRead(leftCamber_deg)} on the left and ${camberRead(rightCamber_deg)} on the right. Against the fall of the road the car is to get a cross camber of ${deg(Math.abs(wanted_deg))}, the ${sign(wanted_deg, OWN_QUANTITIES.crossCamber)} wheel leaning more outboard. Only the left wheel is set, by a plate that slides the top of its strut level across the car. The left inclination is ${deg(leftInclination_deg)}, and the upper pivot sits ${mm(rise_mm)} above the lower one.`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerWithPivots(inclination(item), left(item)),
    measures: [
      { of: 'inclination', says: deg(item.leftInclination_deg).figure },
      { of: 'camber', says: deg(item.leftCamber_deg).figure },
    ],
  }),
  solved: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    before: cornerWithPivots(inclination(item), left(item)),
    corner: leaned(item, changeOf(item)),
    measures: [
      {
        of: 'inclination',
        says: rounded(inclination(item) - changeOf(item), 'deg', 2).figure,
      },
      { of: 'camber', says: `camber ${rounded(left(item) + changeOf(item), 'deg', 2).figure}` },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'change'
      ? seenBeside({ of: 'camber', says: 'camber', view: 'front' }, road, (value) =>
          leaned(item, value),
        )
      : undefined,
  parts: [
    {
      id: 'cross',
      quantity: OWN_QUANTITIES.crossCamber,
      unit: 'deg',
      decimals: 2,
      label: 'Cross camber now, left less right',
      value: (item) => left(item) - right(item),
      sum: 'exact',
      hint: () =>
        phrase`Take the right from the left, each with its sign. Taking away a minus is adding.`,
      slips: [
        rightLessLeft({ left, right }),
        {
          id: 'added',
          confuses: 'sum of both cambers',
          value: (item) => left(item) + right(item),
          text: () =>
            phrase`That is the sum of both cambers. A sum makes sense for toe, which the two wheels share. For camber the difference counts: two equal leans cancel.`,
        },
        {
          id: 'left-alone',
          confuses: 'camber on the left',
          value: left,
          text: () =>
            phrase`That is the camber on the left by itself. It would be the cross camber if the right wheel stood upright. The right one leans too, so take its camber away.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item) => (left(item) - right(item)) / 2,
          text: () =>
            phrase`That is half of the difference: what each wheel would have to give if the two were to meet in the middle. The cross camber is the whole difference.`,
        },
      ],
      solution: ({ leftCamber_deg, rightCamber_deg }, _earlier, value) =>
        phrase`Left less right: ${deg(leftCamber_deg)} − ${term(deg(rightCamber_deg))} = ${rounded(value, 'deg', 2)}. The ${sign(value, OWN_QUANTITIES.crossCamber)} wheel leans more outboard, and as far as camber goes the car tends that way on a level road.`,
    },
    {
      id: 'change',
      quantity: OWN_QUANTITIES.camberChange,
      unit: 'deg',
      decimals: 2,
      label: 'Change of camber on the left',
      value: (item, earlier) => wanted(item) - step(earlier, 0),
      sum: 'exact',
      hint: () =>
        phrase`The right wheel stays. From the cross camber that there is to the one that is wanted: how far, and which way?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'outboard and inboard',
          value: (item, earlier) => step(earlier, 0) - wanted(item),
          text: () =>
            phrase`The size fits, but outboard and inboard have changed places. A change is what is wanted less what there is.`,
        },
        {
          id: 'down-to-nought',
          confuses: 'no cross camber at all',
          value: (_item, earlier) => -step(earlier, 0),
          text: () =>
            phrase`That would leave no cross camber at all. It would be right for a car that is to have both wheels alike. Here a difference is wanted, so stop where it is reached.`,
        },
        {
          id: 'shared',
          confuses: 'both wheels',
          value: (item, earlier) => (wanted(item) - step(earlier, 0)) / 2,
          text: () =>
            phrase`That is half of it, as if both wheels were set. It would be right if the right one took the other half. Only the left one is set.`,
        },
        {
          id: 'added',
          confuses: 'sign of the cross camber',
          value: (item, earlier) => wanted(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the two differences: the sign of the cross camber has been lost. It would be right if the other wheel leaned more outboard now.`,
        },
      ],
      solution: ({ wanted_deg }, earlier, value) =>
        phrase`What is wanted less what there is: ${deg(wanted_deg)} − ${term(rounded(step(earlier, 0), 'deg', 2))} = ${rounded(value, 'deg', 2)}. The top of the left wheel goes ${sign(value, OWN_QUANTITIES.camberChange)}.`,
    },
    {
      id: 'move',
      quantity: OWN_QUANTITIES.upperMoveAcross,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the left upper pivot',
      value: (item, earlier) => move(item, step(earlier, 1)),
      hint: () =>
        phrase`The axis leans with the wheel, and inboard is plus for it: first its inclination afterwards, then step up times tangent, after and before.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -move(item, step(earlier, 1)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The upper pivot goes the way the top of the wheel goes.`,
        },
        ...oneSideSlips<Item>({
          move: (item, earlier) => move(item, step(earlier, 1)),
          place: (item, earlier) => place(item, inclination(item) - step(earlier, 1)),
          moved: 'plate',
          leans: 'inboard',
        }),
        {
          id: 'down-to-nought',
          confuses: 'cross camber that is wanted',
          value: (item, earlier) => move(item, -step(earlier, 0)),
          text: () =>
            phrase`That makes both wheels alike: the cross camber that is wanted has been left out. Lean the wheel by the change that you worked out, and no farther.`,
        },
      ],
      solution: (item, earlier, value) => {
        const { leftInclination_deg, rise_mm } = item;
        const goal = inclination(item) - step(earlier, 1);
        const [from, to] = [place(item, inclination(item)), place(item, goal)];
        return phrase`Axis and wheel lean as one piece: ${deg(leftInclination_deg)} − ${term(rounded(step(earlier, 1), 'deg', 2))} = ${rounded(goal, 'deg', 2)}. Now the pivot sits ${mm(rise_mm)} · tan ${deg(leftInclination_deg)} = ${computed(from, 'length')} inboard of the lower one, then ${mm(rise_mm)} · tan ${rounded(goal, 'deg', 2)} = ${computed(to, 'length')}. So ${computed(to, 'length')} − ${term(computed(from, 'length'))} = ${computed(value, 'length')}: it moves ${sign(value, OWN_QUANTITIES.upperMoveAcross)}.`;
      },
    },
  ],
};
