import type { Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { momentWithLever } from '../paper/along.ts';
import { cornerWithLevers } from '../paper/corner.ts';
import { given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly torque_Nm: number;
  readonly radius_mm: number;
  /** Levers about the steering axis, the axis inboard at both heights. */
  readonly leverAtCentre_mm: number;
  readonly leverAtRoad_mm: number;
}

const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const atCentre = ({ leverAtCentre_mm }: Item): number => si(leverAtCentre_mm, 'mm');
const atRoad = ({ leverAtRoad_mm }: Item): number => si(leverAtRoad_mm, 'mm');
const withLever = (lever: number, { side }: Item, earlier: Earlier): number =>
  momentWithLever(lever, side, { by: 'shaft', force: step(earlier, 0) });
const moment = (item: Item, earlier: Earlier): number => withLever(atCentre(item), item, earlier);

const push = (item: Item): SeenForce => ({
  at: 'centre',
  force: item.torque_Nm / radius(item),
  says: 'push of the road',
});

/** From the torque in the shaft to the force at the tyre, and on to what the carrier gets of it. */
export const shaftTorque: Kind<Item> = {
  id: 'shaft-torque',
  version: 1,
  title: 'What is left of the shaft’s torque',
  lesson: 'what-the-carrier-feels',
  level: 2,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    torque_Nm: 10 * random.integer(24, 90),
    radius_mm: random.integer(280, 350),
    leverAtCentre_mm: random.integer(50, 90),
    leverAtRoad_mm: random.integer(4, 25),
  }),
  sound: ({ torque_Nm, radius_mm }) => (1000 * torque_Nm) / radius_mm < 3200,
  question: ({ side, torque_Nm, radius_mm, leverAtCentre_mm, leverAtRoad_mm }) =>
    phrase`A shaft in line with the ${side} front wheel drives it with ${given(torque_Nm, 'Nm')}. The loaded radius is ${mm(radius_mm)}. About the steering axis, which passes inboard, a force along the car has a lever of ${mm(leverAtCentre_mm)} at the height of the wheel centre and of ${mm(leverAtRoad_mm)} at the road. The car is already rolling, and nothing slips.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => cornerWithLevers(atRoad(item), atCentre(item), radius(item)),
    given: (item) => ({
      measures: [
        { of: 'shortest', says: mm(item.leverAtCentre_mm).figure },
        { of: 'leverAtRoad', says: mm(item.leverAtRoad_mm).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    forces: (item) => [push(item)],
    parts: { moment: { seen: 'moment', force: push } },
  }),
  parts: [
    {
      id: 'force',
      quantity: OWN_QUANTITIES.tyreForce,
      unit: 'N',
      decimals: 0,
      label: 'Force of the road on the tyre',
      value: (item) => item.torque_Nm / radius(item),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Look at the wheel alone: the shaft turns it one way, the road’s push turns it the other way, about the wheel centre. What is the lever of that push?`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => item.torque_Nm / (2 * radius(item)),
          text: () =>
            phrase`That divides by the diameter of the wheel. The push at the road acts about the wheel centre, and from there down to the road it is one loaded radius.`,
        },
        {
          id: 'multiplied',
          confuses: 'multiplying',
          value: (item) => item.torque_Nm * radius(item),
          text: () =>
            phrase`That comes from multiplying torque and radius. It would be the way from a force to a torque; here the torque is known and the force asked for, so divide.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: ({ torque_Nm, radius_mm }) => torque_Nm / radius_mm,
          text: () =>
            phrase`That divides newton metres by millimetres, which gives kilonewtons. It is not wrong as such, but newtons are asked for: put the radius in metres.`,
        },
        {
          id: 'other-lever',
          confuses: 'lever about the steering axis',
          value: (item) => item.torque_Nm / atCentre(item),
          text: () =>
            phrase`That divides by the lever about the steering axis. The shaft turns the wheel about its spin axis, and about that one the road’s push has the loaded radius for a lever.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The road’s push holds against the shaft’s torque, with the loaded radius as its lever: ${given(item.torque_Nm, 'Nm')} ÷ ${rounded(radius(item), 'm', 3)} = ${rounded(value, 'N', 1)}, forward.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.driveMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment about the steering axis',
      value: moment,
      hint: () =>
        phrase`What does the carrier get of it: the force, the torque, or both? And where does that reach it?`,
      slips: [
        ...momentSlips(moment),
        {
          id: 'at-the-road',
          confuses: 'lever at the road',
          value: (item, earlier) => withLever(atRoad(item), item, earlier),
          text: () =>
            phrase`That takes the lever at the road. The road does push there, but it pushes the wheel. The carrier is pushed in the bearing, at the wheel centre, since the shaft keeps the torque.`,
        },
        {
          id: 'whole-torque',
          confuses: 'torque in the shaft',
          value: (item, earlier) => Math.sign(moment(item, earlier)) * item.torque_Nm,
          text: () =>
            phrase`That is the torque in the shaft. It turns the wheel about its spin axis and goes back through the shaft; the bearing passes none of it, and the steering axis does not feel it.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The torque stays in the shaft; the carrier gets the force, at the wheel centre: ${rounded(step(earlier, 0), 'N', 1)} · ${rounded(atCentre(item), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}. Forward and outboard of the axis turns the ${item.side} wheel ${sign(value, QUANTITIES.driveMoment)}.`,
    },
  ],
};
