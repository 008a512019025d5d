import { QUANTITIES, signPhrase } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { brakeMoment, cornerOnRack, heldBy, type Forward } from '../paper/steering.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { brakeSense, wrongTurn } from '../pictures/axle-pictures.ts';
import type { AxlePicture, AxleTurns } from '../pictures/picture.ts';

interface Item {
  readonly brake_N: number;
  readonly scrub_mm: number;
  readonly lever_mm: number;
  readonly forward: Forward;
}

const brake = ({ brake_N }: Item): number => si(brake_N, 'N');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const lever = ({ lever_mm }: Item): number => si(lever_mm, 'mm');
const corner = kept((item: Item) => cornerOnRack(scrub(item), lever(item), item.forward));
const armWord = ({ forward }: Item): string => (forward > 0 ? 'forward' : 'rearward');

const onLeft = ({ scrub_mm, brake_N, forward }: Item): AxlePicture => ({
  scene: 'axle',
  one: true,
  scrub_mm,
  left: { says: given(brake_N, 'N').figure, ahead: -1 },
  rack: forward > 0 ? 'ahead' : 'behind',
});

const turns = (item: Item): AxleTurns => ({
  left: brakeSense('left', item.scrub_mm),
  rod: heldBy(corner(item), brakeMoment(corner(item), brake(item))) > 0 ? 'tension' : 'compression',
});

/** A moment about the axis, and the tie rod that holds it. */
export const rodForceFromBrake: Kind<Item> = {
  id: 'rod-force-from-brake',
  version: 1,
  title: 'What the tie rod holds',
  lesson: 'from-axis-to-hands',
  level: 1,
  draw: (random) => ({
    brake_N: random.grid(1500, 4500, 100),
    scrub_mm: random.pick([-1, 1]) * random.integer(8, 36),
    lever_mm: random.integer(90, 160),
    forward: random.pick<Forward>([1, -1]),
  }),
  sound: () => true,
  pattern: (item) => `arm ${armWord(item)}`,
  question: (item) =>
    phrase`The left front tyre brakes with ${given(item.brake_N, 'N')}; the brake sits on the carrier. The steering axis stands upright, and the scrub radius is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. The steering arm points ${armWord(item)}, and the tie rod runs straight across the car, ${mm(item.lever_mm)} from the axis.`,
  picture: (item) => onLeft(item),
  solved: (item) => ({ ...onLeft(item), turns: turns(item) }),
  wrong: (item, road) => {
    if (road.slip === 'both-wheels')
      return {
        ...onLeft(item),
        one: false,
        right: { says: 'yours too', ahead: -1, wrong: true },
        turns: { left: brakeSense('left', item.scrub_mm) },
      };
    if (road.value * road.answer > 0) return undefined;
    if (road.part === 'moment') return wrongTurn(onLeft(item), 'left', road, {});
    const rod = (value: number) => (value > 0 ? 'tension' : 'compression');
    return {
      ...onLeft(item),
      turns: { ...turns(item), rod: rod(road.answer) },
      wrong: { rod: rod(road.value) },
    };
  },
  drawnTrue: ['rod'],
  parts: [
    {
      id: 'moment',
      quantity: QUANTITIES.brakeMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the braking force about the steering axis',
      value: (item) => brakeMoment(corner(item), brake(item)),
      hint: () =>
        phrase`The braking force pulls the contact centre rearward. How far beside the axis does it pull, and on which side?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of the moment',
          value: (item) => -brakeMoment(corner(item), brake(item)),
          text: ({ scrub_mm }) =>
            phrase`The size fits, but the direction of the moment is turned round. It would be so with the axis on the other side of the tyre. Here it meets the road ${sign(scrub_mm, QUANTITIES.scrubRadius)} of the contact centre: pull there rearward and see which way the front of the wheel goes.`,
        },
        {
          id: 'lever-of-the-rod',
          confuses: 'lever of the tie rod',
          value: (item) => Math.sign(scrub(item)) * brake(item) * lever(item),
          text: () =>
            phrase`That multiplies by the lever of the tie rod. The rod pulls at the steering arm, and its turn comes next; the braking force acts at the road, and its lever is the scrub radius.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both front wheels',
          value: (item) => 2 * brakeMoment(corner(item), brake(item)),
          text: () =>
            phrase`That counts both front wheels. They brake the car together, but each has an axis and a tie rod of its own. Here one wheel is asked for.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * brakeMoment(corner(item), brake(item)),
          text: () =>
            phrase`That has millimetres in it: newtons times millimetres are newton millimetres. Turn the scrub radius into metres before you multiply, and newton metres come out.`,
        },
      ],
      solution: ({ brake_N, scrub_mm }, _earlier, value) =>
        phrase`Force times lever: ${given(brake_N, 'N')} · ${term(given(scrub_mm / 1000, 'm'))} = ${rounded(value, 'Nm', 1)}. ${value > 0 ? 'The tyre is pulled rearward outboard of the axis, so the front of the wheel swings outboard: on the left side of the car, to the left.' : 'The tyre is pulled rearward inboard of the axis, so the front of the wheel swings inboard: on the left side of the car, to the right.'}`,
    },
    {
      id: 'rod',
      quantity: QUANTITIES.rodForce,
      unit: 'N',
      decimals: 0,
      label: 'Force in the tie rod',
      value: (item, earlier) => heldBy(corner(item), step(earlier, 0)),
      hint: () =>
        phrase`The rod has to turn the wheel back with just the same moment, on its own lever. Which way would the end of the steering arm go if the rod let it: away from the rack, or toward it?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'tension and compression',
          value: (item, earlier) => -heldBy(corner(item), step(earlier, 0)),
          text: (item) =>
            phrase`The size fits, but tension and compression have changed places. It would be so with the arm on the other side of the axis. This arm points ${armWord(item)}: turn the wheel in your mind and watch its end.`,
        },
        {
          id: 'multiplied',
          confuses: 'lever of the tie rod',
          value: (item, earlier) => step(earlier, 0) * lever(item),
          text: () =>
            phrase`That multiplies the moment by the lever of the tie rod. A force times a lever makes a moment; here the moment is known and the force is asked for, so divide.`,
        },
        {
          id: 'whole-braking-force',
          confuses: 'braking force',
          value: brake,
          text: () =>
            phrase`That is the braking force itself. The arms of the suspension take it to the body. The tie rod holds only what would turn the wheel about its axis: the moment.`,
        },
        {
          id: 'shared',
          confuses: 'two tie rods',
          value: (item, earlier) => heldBy(corner(item), step(earlier, 0)) / 2,
          text: () =>
            phrase`That shares the moment between two tie rods. The other one belongs to the other wheel; on this carrier there is one, and it holds all of it.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Moment over lever: ${rounded(Math.abs(step(earlier, 0)), 'Nm', 1)} ÷ ${given(item.lever_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}. ${QUANTITIES.brakeMoment.subject.replace('it turns', 'The moment turns')} ${signPhrase(QUANTITIES.brakeMoment, step(earlier, 0) > 0 ? 'positive' : 'negative')}, so the end of an arm that points ${armWord(item)} goes ${value > 0 ? 'outboard, away from the rack: the rod is in tension' : 'inboard, toward the rack: the rod is in compression'}.`,
    },
  ],
};
