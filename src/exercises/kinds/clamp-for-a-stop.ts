import { clampToGrip, gripAtWorst } from '#core/fastening/friction-grip.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';

interface Item {
  readonly brake_N: number;
  readonly radius_mm: number;
  readonly circle_mm: number;
  readonly count: number;
  readonly friction: number;
}

const COUNT_WORDS: Readonly<Record<number, string>> = { 4: 'four', 5: 'five', 6: 'six' };

const brake = ({ brake_N }: Item): number => si(brake_N, 'N');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const circleRadius = ({ circle_mm }: Item): number => si(circle_mm, 'mm') / 2;
/** What the faces have to hold, all fasteners together. */
const held = (item: Item, atCircle: number): number =>
  gripAtWorst({
    torque: atCircle * circleRadius(item),
    force: brake(item),
    circleRadius: circleRadius(item),
    count: 1,
    friction: item.friction,
  });
const clamp = (item: Item, atCircle: number): number =>
  clampToGrip({
    torque: atCircle * circleRadius(item),
    force: brake(item),
    circleRadius: circleRadius(item),
    count: item.count,
    friction: item.friction,
  });

/** From a braking force to the clamp load that keeps wheel and hub together. */
export const clampForAStop: Kind<Item> = {
  id: 'clamp-for-a-stop',
  version: 1,
  title: 'What a stop asks of each stud',
  lesson: 'holding-the-wheel-on',
  level: 2,
  draw: (random) => ({
    brake_N: random.grid(2000, 5000, 100),
    radius_mm: random.integer(270, 350),
    circle_mm: random.pick([98, 100, 108, 110, 112, 120]),
    count: random.pick([4, 5, 6]),
    friction: random.integer(12, 25) / 100,
  }),
  sound: () => true,
  question: (item) =>
    phrase`A front tyre brakes with ${given(item.brake_N, 'N')} at a loaded radius of ${mm(item.radius_mm)}. The wheel sits on ${COUNT_WORDS[item.count] ?? ''} studs on a circle ${mm(item.circle_mm)} in diameter, and the friction between its face and the hub’s is taken as ${String(item.friction)}. Leave the wheel load aside. With how much does each stud have to clamp, where brake torque and braking force pull the same way?`,
  parts: [
    {
      id: 'torque',
      quantity: QUANTITIES.brakeTorque,
      unit: 'Nm',
      decimals: 0,
      label: 'Brake torque that crosses the faces',
      value: (item) => brake(item) * radius(item),
      hint: () =>
        phrase`The road pulls at the tyre; the lever is the way from there to the spin axis.`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter of the tyre',
          value: (item) => 2 * brake(item) * radius(item),
          text: () =>
            phrase`That takes the diameter of the tyre for the lever. The force acts at the road and turns about the spin axis: one radius away.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * brake(item) * radius(item),
          text: () =>
            phrase`That has millimetres in it: newtons times millimetres are newton millimetres. Turn the loaded radius into metres before you multiply.`,
        },
        {
          id: 'circle',
          confuses: 'circle of the studs',
          value: (item) => brake(item) * circleRadius(item),
          text: () =>
            phrase`That takes the circle of the studs for the lever. It comes next. The braking force acts out at the road, and its lever is the loaded radius.`,
        },
        {
          id: 'divided',
          confuses: 'dividing by the radius',
          value: (item) => brake(item) / radius(item),
          text: () =>
            phrase`That comes from dividing by the radius. It would be right on the way from a torque to a force. Here the force is known and the torque is asked for: multiply.`,
        },
      ],
      solution: ({ brake_N, radius_mm }, _earlier, value) =>
        phrase`Force times loaded radius: ${given(brake_N, 'N')} · ${given(radius_mm / 1000, 'm')} = ${rounded(value, 'Nm', 1)}.`,
    },
    {
      id: 'at-circle',
      quantity: OWN_QUANTITIES.forceAtCircle,
      unit: 'kN',
      decimals: 2,
      label: 'Force that the torque makes at the circle of the studs',
      value: (item, earlier) => step(earlier, 0) / circleRadius(item),
      hint: () =>
        phrase`The faces hold the same torque near the studs, on a far shorter lever. Is what you are given the radius of their circle?`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter of the circle',
          value: (item, earlier) => step(earlier, 0) / (2 * circleRadius(item)),
          text: () =>
            phrase`That divides by the diameter of the circle. Drawings give the diameter, since that can be measured; the lever is from the spin axis to a stud, half of it.`,
        },
        {
          id: 'multiplied',
          confuses: 'multiplying by the lever',
          value: (item, earlier) => step(earlier, 0) * circleRadius(item),
          text: () =>
            phrase`That comes from multiplying by the lever. A torque over its lever makes a force; the shorter the lever, the larger the force.`,
        },
        {
          id: 'at-the-tyre',
          confuses: 'radius of the tyre',
          value: brake,
          text: () =>
            phrase`That divides by the radius of the tyre and gives the braking force back. At the studs the same torque has a much shorter lever.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both front wheels',
          value: (item, earlier) => (2 * step(earlier, 0)) / circleRadius(item),
          text: () =>
            phrase`That counts both front wheels. Each has studs of its own, which hold the torque of their own brake and no other.`,
        },
      ],
      solution: ({ circle_mm }, earlier, value) =>
        phrase`Torque over the circle’s radius: ${rounded(step(earlier, 0), 'Nm', 1)} ÷ ${given(circle_mm / 2000, 'm')} = ${rounded(value, 'N', 1)}, or ${rounded(value, 'kN', 2)}.`,
    },
    {
      id: 'clamp',
      quantity: QUANTITIES.clampNeeded,
      unit: 'kN',
      decimals: 1,
      label: 'Clamp load that each stud needs',
      value: (item, earlier) => clamp(item, step(earlier, 1)),
      hint: () =>
        phrase`Add the braking force itself. Friction holds only its share of the squeeze, and the studs share the work.`,
      slips: [
        {
          id: 'not-shared',
          confuses: 'number of studs',
          value: (item, earlier) => item.count * clamp(item, step(earlier, 1)),
          text: () =>
            phrase`That leaves the number of studs out: it is the squeeze of all of them together. Each one carries its part.`,
        },
        {
          id: 'friction-multiplied',
          confuses: 'multiplying by the friction',
          value: (item, earlier) => clamp(item, step(earlier, 1)) * item.friction ** 2,
          text: () =>
            phrase`That comes from multiplying by the friction, as on the way from a squeeze to what it holds. Backwards it takes a squeeze several times as large: divide.`,
        },
        {
          id: 'no-friction',
          confuses: 'shank of the stud',
          value: (item, earlier) => clamp(item, step(earlier, 1)) * item.friction,
          text: () =>
            phrase`That is the force across at each stud, as if the shank of the stud held it like a peg. The faces hold it by friction, and that takes a squeeze several times as large.`,
        },
        {
          id: 'taken-away',
          confuses: 'forces that pull against each other',
          value: (item, earlier) =>
            clamp(item, step(earlier, 1)) *
            ((held(item, step(earlier, 1)) - 2 * brake(item)) / held(item, step(earlier, 1))),
          text: () =>
            phrase`That has the two as forces that pull against each other. At the stud on the other side of the hub it is so. The question is about the one that has it worst, where they add up.`,
        },
      ],
      solution: (item, earlier, value) => {
        const across = held(item, step(earlier, 1));
        return phrase`Both together are ${rounded(step(earlier, 1), 'N', 2)} + ${given(item.brake_N, 'N')} = ${rounded(across, 'N', 2)}. Over studs and friction: ${rounded(across, 'N', 2)} ÷ ${bare(item.count, 0)} ÷ ${String(item.friction)} = ${rounded(value, 'N', 1)}, or ${rounded(value, 'kN', 1)}.`;
      },
    },
  ],
};
