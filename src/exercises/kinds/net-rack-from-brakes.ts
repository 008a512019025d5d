import { QUANTITIES, signPhrase } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { onRack, steeringMomentOf } from '../paper/axle.ts';
import { otherPlace, place } from '../paper/gear.ts';
import type { Forward } from '../paper/steering.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { axlePictures, brakeSense, senseOf } from '../pictures/axle-pictures.ts';

interface Item {
  readonly left_N: number;
  readonly right_N: number;
  readonly scrub_mm: number;
  readonly lever_mm: number;
  readonly forward: Forward;
}

const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const lever = ({ lever_mm }: Item): number => si(lever_mm, 'mm');
const both = kept((item: Item): number =>
  steeringMomentOf({ left: item.left_N, right: item.right_N }, scrub(item)),
);

/** Two brakes that differ, and what they leave on the rack. */
export const netRackFromBrakes: Kind<Item> = {
  id: 'net-rack-from-brakes',
  version: 1,
  title: 'What is left on the rack',
  lesson: 'left-against-right',
  level: 1,
  draw: (random) => ({
    left_N: random.grid(1200, 4500, 100),
    right_N: random.grid(1200, 4500, 100),
    scrub_mm: random.pick([-1, 1]) * random.integer(8, 36),
    lever_mm: random.integer(90, 160),
    forward: random.pick<Forward>([1, -1]),
  }),
  sound: ({ left_N, right_N }) => Math.abs(left_N - right_N) >= 400,
  pattern: (item) => `rack ${place(item)} the axis`,
  question: (item) =>
    phrase`On a roller brake tester the left front wheel brakes with ${given(item.left_N, 'N')} and the right one with ${given(item.right_N, 'N')}. The brakes sit on the carriers, the steering axes stand upright, and the scrub radius on both sides is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. The rack lies ${place(item)} the axes, and each tie rod runs straight across the car, ${mm(item.lever_mm)} from its axis. On the road both brakes would do the same at once.`,
  ...axlePictures<Item>({
    brakes: (item) => item,
    rack: ({ forward }) => (forward > 0 ? 'ahead' : 'behind'),
    parts: { moment: 'both', rack: 'rack' },
    turns: (item) => ({
      left: brakeSense('left', item.scrub_mm),
      right: brakeSense('right', item.scrub_mm),
      both: senseOf(both(item)),
      rack: senseOf(onRack(both(item), lever(item), item.forward)),
    }),
  }),
  drawnTrue: ['rack'],
  parts: [
    {
      id: 'moment',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment of both wheels together',
      value: both,
      hint: () =>
        phrase`The two wheels are mirror images, so equal forces would leave nothing. What is left when they differ, and which wheel wins? Where does its tyre swing when it is pulled rearward?`,
      slips: [
        {
          id: 'added-up',
          confuses: 'two brakes added up',
          value: (item) =>
            Math.sign(scrub(item)) * Math.abs(scrub(item)) * (item.left_N + item.right_N),
          text: () =>
            phrase`That has the two brakes added up. To stop the car they do add; on the rack the right wheel is the mirror image of the left one and turns the other way, so one counts against the other.`,
        },
        {
          id: 'left-alone',
          confuses: 'left wheel alone',
          value: (item) => scrub(item) * item.left_N,
          text: () =>
            phrase`That is the left wheel alone. It would be all if the right brake did nothing; here the right wheel takes a part of it away.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the moment',
          value: (item) => -both(item),
          text: ({ scrub_mm }) =>
            phrase`The size fits, but the direction of the moment is turned round. It would be so with the axis on the other side of the tyres. Here it meets the road ${sign(scrub_mm, QUANTITIES.scrubRadius)} of the contact centre: pull the stronger tyre rearward there and see which way its front goes.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * both(item),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the scrub radius has to be in metres.`,
        },
      ],
      solution: ({ left_N, right_N, scrub_mm }, _earlier, value) =>
        phrase`What is left is the difference: ${given(left_N, 'N')} − ${given(right_N, 'N')} = ${rounded(left_N - right_N, 'N', 0)}. Times the lever: ${term(rounded(left_N - right_N, 'N', 0))} · ${term(given(scrub_mm / 1000, 'm'))} = ${rounded(value, 'Nm', 1)}. ${left_N > right_N ? 'The left wheel wins' : 'The right wheel wins'}, and it turns both ${signPhrase(QUANTITIES.steeringMoment, value > 0 ? 'positive' : 'negative')}.`,
    },
    {
      id: 'rack',
      quantity: QUANTITIES.netRackForce,
      unit: 'N',
      decimals: 0,
      label: 'Force of both rods on the rack',
      value: (item, earlier) => onRack(step(earlier, 0), lever(item), item.forward),
      hint: (item) =>
        phrase`The moment over the lever of a tie rod is a force. The wheels want to turn one way; which way would the rack go with them, when it lies ${place(item)} the axes?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of the rack',
          value: (item, earlier) => -onRack(step(earlier, 0), lever(item), item.forward),
          text: (item) =>
            phrase`The size fits, but the direction of the rack is turned round. It would be so with a rack that lies ${otherPlace(item)} the axes. With this one the rack goes ${item.forward > 0 ? 'the way' : 'against the way'} the wheels turn.`,
        },
        {
          id: 'shared',
          confuses: 'two tie rods',
          value: (item, earlier) => onRack(step(earlier, 0), lever(item), item.forward) / 2,
          text: () =>
            phrase`That shares the moment between two tie rods. They do not share it: each rod holds its own wheel’s moment, the two push against each other, and what is left of them is the whole difference.`,
        },
        {
          id: 'multiplied',
          confuses: 'lever of the tie rod',
          value: (item, earlier) => step(earlier, 0) * lever(item),
          text: () =>
            phrase`That multiplies the moment by the lever of the tie rod. A force times a lever makes a moment; here the moment is known and the force is asked for, so divide.`,
        },
        {
          id: 'braking-difference',
          confuses: 'difference of the braking forces',
          value: ({ left_N, right_N }) => left_N - right_N,
          text: () =>
            phrase`That is the difference of the braking forces itself. It pulls at the car; the rack gets only what would turn the wheels about their axes, by a short lever at the road and a long one at the rod.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Moment over lever: ${rounded(Math.abs(step(earlier, 0)), 'Nm', 1)} ÷ ${given(item.lever_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}. The wheels are turned ${sign(step(earlier, 0), QUANTITIES.steeringMoment)}, and a rack ${place(item)} the axes ${item.forward > 0 ? 'goes that way too' : 'goes the other way'}: ${sign(value, QUANTITIES.netRackForce)}.`,
    },
  ],
};
