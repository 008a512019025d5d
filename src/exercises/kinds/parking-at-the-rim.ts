import { handwheelTorque, rimForce, type SteeringGear } from '#core/handwheel.ts';
import { parkingMomentByThirds } from '#core/parking.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';

/** Frictions that can be written in words. */
const FRICTION_WORDS = { 0.4: 'four tenths', 0.6: 'six tenths', 0.7: 'seven tenths' } as const;

type Friction = keyof typeof FRICTION_WORDS;

interface Item {
  readonly load_N: number;
  readonly friction: Friction;
  readonly width_mm: number;
  readonly scrub_mm: number;
  readonly arm_mm: number;
  readonly travel_mm: number;
  readonly rim_mm: number;
}

const load = ({ load_N }: Item): number => si(load_N, 'N');
const width = ({ width_mm }: Item): number => si(width_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const arm = ({ arm_mm }: Item): number => si(arm_mm, 'mm');
const gear = ({ travel_mm, rim_mm }: Item): SteeringGear => ({
  travelPerTurn: si(travel_mm, 'mm'),
  rimRadius: si(rim_mm, 'mm') / 2,
  assist: 1,
});
const ground = (item: Item, lever: number): number => item.friction * load(item) * lever;
const onRack = (item: Item, earlier: Earlier): number => (2 * step(earlier, 1)) / arm(item);
const torque = (item: Item, rack: number): number => handwheelTorque(rack, gear(item));
const atRim = (item: Item, rack: number): number => rimForce(torque(item, rack), gear(item));
const positive = (value: number): boolean => value > 0;

/** Turning the wheels of a standing car, from the print to the hands. */
export const parkingAtTheRim: Kind<Item> = {
  id: 'parking-at-the-rim',
  version: 1,
  title: 'Parking without power steering',
  lesson: 'side-weight-parking',
  level: 2,
  draw: (random) => ({
    load_N: random.grid(2500, 4500, 100),
    friction: random.pick<Friction>([0.4, 0.6, 0.7]),
    width_mm: 3 * random.integer(45, 72),
    scrub_mm: random.integer(18, 50),
    arm_mm: random.integer(100, 160),
    travel_mm: random.integer(40, 56),
    rim_mm: 10 * random.integer(36, 42),
  }),
  sound: () => true,
  question: ({ load_N, friction, width_mm, scrub_mm, arm_mm, travel_mm, rim_mm }) =>
    phrase`An old car without power steering stands with its brakes held. Each front wheel carries ${given(load_N, 'N')}; the prints of the tyres are ${mm(width_mm)} wide, the scrub radius is ${mm(scrub_mm)}, and the friction is taken as ${FRICTION_WORDS[friction]}. Each tie rod has a lever of ${mm(arm_mm)} about its axis and lies in line with the rack. One turn of the steering wheel, ${mm(rim_mm)} across, moves the rack by ${mm(travel_mm)}. Estimate by thirds of the print.`,
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.printLever,
      unit: 'mm',
      decimals: 1,
      label: 'Lever of the print about the axis',
      value: (item) =>
        parkingMomentByThirds(1, 1, { width: width(item), scrubRadius: scrub(item) }),
      possible: positive,
      hint: () =>
        phrase`Two lengths at right angles: a third of the print’s width for the twisting, the scrub radius for the dragging. How long is the slanted side?`,
      slips: [
        {
          id: 'added',
          confuses: 'sum of both lengths',
          value: (item) => width(item) / 3 + scrub(item),
          text: () =>
            phrase`That is the sum of both lengths, as if every bit of the print lay on the far side of the axis. Some lies nearer; the formula adds the squares and takes the root.`,
        },
        {
          id: 'whole-width',
          confuses: 'whole width',
          value: (item) => Math.hypot(width(item), scrub(item)),
          text: () =>
            phrase`That takes the whole width of the print. Most of the rubber lies much nearer to the middle than the edges do; on the mean it is a third of the width.`,
        },
        {
          id: 'half-width',
          confuses: 'half of the width',
          value: (item) => Math.hypot(width(item) / 2, scrub(item)),
          text: () =>
            phrase`That takes half of the width: the edge of the print. It would be right if only the edge carried. The rubber in between lies nearer, and on the mean it is a third.`,
        },
        {
          id: 'scrub-alone',
          confuses: 'scrub radius alone',
          value: scrub,
          text: () =>
            phrase`That is the scrub radius alone. It would be right for a tyre that stands on a point. The print is wide and has to be twisted as well.`,
        },
      ],
      solution: ({ width_mm, scrub_mm }, _earlier, value) =>
        phrase`A third of the width: ${mm(width_mm)} ÷ ${bare(3, 0)} = ${mm(width_mm / 3)}. Square it, add the square of ${mm(scrub_mm)}, and take the root: ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.parkingByThirds,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment that turns one wheel',
      value: (item, earlier) => ground(item, step(earlier, 0)),
      possible: positive,
      hint: () =>
        phrase`The friction force is the load times the friction. It works on the lever that you have found.`,
      slips: [
        {
          id: 'no-friction',
          confuses: 'friction',
          value: (item, earlier) => load(item) * step(earlier, 0),
          text: () =>
            phrase`That leaves the friction out, as if the road held the tyre with the whole of its load. It holds with a part of it: multiply by the friction.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item, earlier) => 2 * ground(item, step(earlier, 0)),
          text: () =>
            phrase`That counts both wheels. They come together on the rack, in the next step; here one wheel is asked for.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * ground(item, step(earlier, 0)),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres, a thousand times smaller a number.`,
        },
        {
          id: 'print-forgotten',
          confuses: 'scrub radius alone',
          value: (item) => ground(item, scrub(item)),
          text: () =>
            phrase`That works with the scrub radius alone. The print has a width, and twisting it takes most of the effort: use the lever from the step before.`,
        },
      ],
      solution: ({ load_N, friction }, earlier, value) =>
        phrase`Friction times load times lever: ${bare(friction, 1)} · ${given(load_N, 'N')} · ${rounded(step(earlier, 0), 'm', 5)} = ${rounded(value, 'Nm', 1)}.`,
    },
    {
      id: 'rack',
      quantity: OWN_QUANTITIES.rackEffort,
      unit: 'N',
      decimals: 0,
      label: 'Force on the rack, both wheels',
      value: onRack,
      possible: positive,
      hint: () =>
        phrase`Each tie rod needs moment over lever, and the rack has to move two of them.`,
      slips: [
        {
          id: 'one-wheel',
          confuses: 'one wheel alone',
          value: (item, earlier) => onRack(item, earlier) / 2,
          text: () =>
            phrase`That is one wheel alone. Both front wheels stand on the road, both are twisted, and one rack turns them: count both.`,
        },
        {
          id: 'multiplied',
          confuses: 'multiplying by the lever',
          value: (item, earlier) => 2 * step(earlier, 1) * arm(item),
          text: () =>
            phrase`That comes from multiplying by the lever. It would turn a force into a moment. Here the moment is known and the force asked for: divide.`,
        },
        {
          id: 'lever-of-the-print',
          confuses: 'lever of the print',
          value: (_item, earlier) => (2 * step(earlier, 1)) / step(earlier, 0),
          text: () =>
            phrase`That divides by the lever of the print. It gives the friction under the tyres back. The tie rods pull on levers of their own, the arms of the carriers.`,
        },
        {
          id: 'shared',
          confuses: 'sharing between the wheels',
          value: (item, earlier) => onRack(item, earlier) / 4,
          text: () =>
            phrase`That is sharing between the wheels: half of the moment for each. The moment in the step before is of one wheel already, so the rack has twice as much to move.`,
        },
      ],
      solution: ({ arm_mm }, earlier, value) =>
        phrase`Both wheels: ${bare(2, 0)} · ${rounded(step(earlier, 1), 'Nm', 3)} ÷ ${given(arm_mm / 1000, 'm')} = ${rounded(value, 'N', 1)}.`,
    },
    {
      id: 'rim',
      quantity: OWN_QUANTITIES.rimEffort,
      unit: 'N',
      decimals: 0,
      label: 'Force at the rim of the steering wheel',
      value: (item, earlier) => atRim(item, step(earlier, 2)),
      possible: positive,
      hint: () =>
        phrase`In one turn both ends do the same work: rack force times travel on one side, rim force times the way round the rim on the other.`,
      slips: [
        {
          id: 'no-circle',
          confuses: 'travel in one turn',
          value: (item, earlier) => 2 * Math.PI * atRim(item, step(earlier, 2)),
          text: () =>
            phrase`That takes the travel in one turn for the radius of the pinion. The travel is the whole way round it, 2π times the radius.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter of the steering wheel',
          value: (item, earlier) => atRim(item, step(earlier, 2)) / 2,
          text: () =>
            phrase`That divides by the diameter of the steering wheel. The lever of the hands is from the middle to the rim: half of it.`,
        },
        {
          id: 'torque',
          confuses: 'torque at the column',
          value: (item, earlier) => torque(item, step(earlier, 2)),
          text: () =>
            phrase`That is the torque at the column in newton metres, the number before the last division. The force at the rim is that torque over the radius of the rim.`,
        },
        {
          id: 'one-wheel',
          confuses: 'one wheel alone',
          value: (item, earlier) => atRim(item, step(earlier, 2)) / 4,
          text: () =>
            phrase`That halves twice, as if one wheel alone and both hands shared it. Both wheels are in the rack force already, and the force at the rim is that of both hands together.`,
        },
      ],
      solution: ({ travel_mm, rim_mm }, earlier, value) =>
        phrase`Same work at both ends: ${rounded(step(earlier, 2), 'N', 1)} · ${given(travel_mm / 1000, 'm')} ÷ ${bare(2 * Math.PI, 4)} ÷ ${given(rim_mm / 2000, 'm')} = ${rounded(value, 'N', 1)}. That is hard work; no wonder that such cars had large steering wheels.`,
    },
  ],
};
