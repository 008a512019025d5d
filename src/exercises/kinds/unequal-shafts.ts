import type { Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind, type Part } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { jointMoment } from '../paper/axle.ts';
import { deg, given, phrase, rounded, si, sign, term } from '../phrase.ts';
import { senseOf, wrongTurn } from '../pictures/axle-pictures.ts';
import type { AxleTurns } from '../pictures/picture.ts';

interface Item {
  readonly torque_Nm: number;
  readonly left_deg: number;
  readonly right_deg: number;
  /** Where both shafts' outer ends stand, against the inner ones. */
  readonly outer: 'higher' | 'lower';
}

const angle_deg = (side: Side, item: Item): number =>
  side === 'left' ? item.left_deg : item.right_deg;
const rise = (side: Side, item: Item): number =>
  (item.outer === 'higher' ? 1 : -1) * si(angle_deg(side, item), 'deg');
const couple = (side: Side, item: Item): number =>
  jointMoment(side, item.torque_Nm, rise(side, item));
const other = ({ outer }: Item): string => (outer === 'higher' ? 'lower' : 'higher');

const ofJoint = (side: Side): Part<Item> => {
  const quantity = side === 'left' ? OWN_QUANTITIES.leftJoint : OWN_QUANTITIES.rightJoint;
  const own = kept((item: Item): number => couple(side, item));
  const towards = (item: Item, size: number): number => Math.sign(own(item)) * size;
  return {
    id: side,
    quantity,
    unit: 'Nm',
    decimals: 1,
    label: `Moment of the ${side} joint’s couple about its steering axis`,
    value: own,
    hint: () =>
      phrase`A joint that bends a torque round a corner answers with a couple across: the torque times the tangent of half the angle. On a driven left wheel it turns to the left where the outer end stands higher; on the right everything is mirrored.`,
    slips: [
      {
        id: 'whole-angle',
        confuses: 'whole angle',
        value: (item) => towards(item, item.torque_Nm * Math.tan(Math.abs(rise(side, item)))),
        text: () =>
          phrase`That takes the tangent of the whole angle. The joint’s balls lie in the plane that halves the corner between shaft and wheel, so half the angle counts, on either side of it.`,
      },
      {
        id: 'turned-round',
        confuses: 'direction of the couple',
        value: (item) => -own(item),
        text: (item) =>
          phrase`The size fits, but the direction of the couple is turned round. It would be so with the outer end ${other(item)} than the inner one, or on the other wheel. Here the outer end stands ${item.outer}, and it is the ${side} wheel.`,
      },
      {
        id: 'whole-torque',
        confuses: 'whole torque',
        value: (item) => towards(item, item.torque_Nm),
        text: () =>
          phrase`That is the whole torque of the shaft. It turns the wheel about its spin axis and drives the car; about the upright steering axis there is only the small couple that the bent joint makes.`,
      },
      {
        id: 'calculator-on-radians',
        confuses: 'radians',
        value: (item) =>
          towards(item, item.torque_Nm * Math.abs(Math.tan(angle_deg(side, item) / 2))),
        text: () =>
          phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the angle here is in degrees. Set it to DEG and take the tangent again.`,
      },
    ],
    solution: (item, _earlier, value) =>
      phrase`Half the angle is ${deg(angle_deg(side, item) / 2)}: ${given(item.torque_Nm, 'Nm')} · tan ${deg(angle_deg(side, item) / 2)} = ${rounded(Math.abs(value), 'Nm', 1)}. On the ${side}, with the outer end ${item.outer}, it turns the wheel ${sign(value, quantity)}.`,
  };
};

const turns = (item: Item): AxleTurns => ({
  left: senseOf(couple('left', item)),
  right: senseOf(couple('right', item)),
  both: senseOf(couple('left', item) + couple('right', item)),
});

/** Two shafts at different angles under equal torque: torque steer. */
export const unequalShafts: Kind<Item> = {
  id: 'unequal-shafts',
  version: 1,
  title: 'Short shaft, long shaft',
  lesson: 'left-against-right',
  level: 2,
  draw: (random) => ({
    torque_Nm: random.grid(400, 900, 10),
    left_deg: random.integer(2, 11),
    right_deg: random.integer(2, 11),
    outer: random.pick(['higher', 'lower']),
  }),
  sound: ({ left_deg, right_deg }) => Math.abs(left_deg - right_deg) >= 3,
  pattern: ({ outer }) => `outer ends ${outer}`,
  question: (item) =>
    phrase`Under full power each drive shaft of a front-drive car passes ${given(item.torque_Nm, 'Nm')}, and both tyres grip alike. Both shafts have their outer ends ${item.outer} than the inner ones: the left shaft stands ${deg(item.left_deg)} out of line with its wheel’s spin axis, the right one ${deg(item.right_deg)}. The wheels and the steering axes stand upright.`,
  solved: (item) => ({ scene: 'axle', scrub_mm: 0, turns: turns(item) }),
  wrong: (item, road) =>
    wrongTurn(
      { scene: 'axle', scrub_mm: 0 },
      road.part === 'both' ? 'both' : road.part === 'left' ? 'left' : 'right',
      road,
      turns(item),
    ),
  drawnTrue: ['both'],
  parts: [
    ofJoint('left'),
    ofJoint('right'),
    {
      id: 'both',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment that the two joints leave',
      value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
      hint: () =>
        phrase`The two couples turn their wheels in opposite directions, and both wheels hang on one rack. Which of them wins, and by how much?`,
      slips: [
        {
          id: 'added-up',
          confuses: 'sizes added up',
          value: (_item, earlier) => step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`That has the two sizes added up, as if both wheels were turned the same way. The wheels are mirror images: with the outer ends of both shafts alike, one couple counts against the other.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the steering moment',
          value: (_item, earlier) => -step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but the direction of the steering moment is turned round. The larger couple belongs to the shaft that stands at the larger angle, and that one decides.`,
        },
        {
          id: 'halved',
          confuses: 'mean',
          value: (_item, earlier) => (step(earlier, 0) + step(earlier, 1)) / 2,
          text: () =>
            phrase`That is the mean of the two. A mean would be right for one wheel on average; the rack has to hold both wheels, so what is left of the two counts in full.`,
        },
        {
          id: 'left-alone',
          confuses: 'left wheel alone',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the left wheel alone. The right wheel hangs on the same rack, and its couple takes a part of the left one away or outweighs it.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`One against the other: ${rounded(step(earlier, 0), 'Nm', 1)} + ${term(rounded(step(earlier, 1), 'Nm', 1))} = ${rounded(value, 'Nm', 1)}. Both wheels are turned ${sign(value, QUANTITIES.steeringMoment)}: the shaft at the larger angle wins.`,
    },
  ],
};
