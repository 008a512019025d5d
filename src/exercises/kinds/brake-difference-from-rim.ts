import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { onRack, steeringMomentOfDifference } from '../paper/axle.ts';
import { between } from '../paper/plausible.ts';
import { gear, otherPlace, place, type Gear } from '../paper/gear.ts';
import { assistWord, torquePerNewton, type Assist, type Forward } from '../paper/steering.ts';
import { bare, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { senseOf, wrongTurn } from '../pictures/axle-pictures.ts';
import type { AxlePicture } from '../pictures/picture.ts';

interface Item extends Gear {
  readonly rim_N: number;
  readonly lever_mm: number;
  readonly scrub_mm: number;
}

const lever = ({ lever_mm }: Item): number => si(lever_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const rackFrom = kept(
  (item: Item): number =>
    (item.rim_N * gear(item).rimRadius) / torquePerNewton(item.forward, gear(item)),
);
/** Force on the rack for a newton metre of both wheels, and their moment for a newton of difference. */
const forcePerMoment = kept((item: Item): number => onRack(1, lever(item), item.forward));
const momentPerForce = kept((item: Item): number => steeringMomentOfDifference(1, scrub(item)));
const momentFrom = (item: Item, earlier: Earlier): number =>
  step(earlier, 0) / forcePerMoment(item);
const differenceFrom = (item: Item, earlier: Earlier): number =>
  step(earlier, 1) / momentPerForce(item);

const onAxle = ({ scrub_mm, forward }: Item): AxlePicture => ({
  scene: 'axle',
  scrub_mm,
  rack: forward > 0 ? 'ahead' : 'behind',
});

/** Backwards from what the driver feels to the brake that is weaker. */
export const brakeDifferenceFromRim: Kind<Item> = {
  id: 'brake-difference-from-rim',
  version: 1,
  title: 'Which brake is the weaker one',
  lesson: 'left-against-right',
  level: 3,
  draw: (random) => ({
    rim_N: random.pick([-1, 1]) * random.grid(1, 12, 0.5),
    rim_mm: random.grid(350, 400, 10),
    assist: random.pick<Assist>([3, 4, 5]),
    travel_mm: random.integer(40, 60),
    lever_mm: random.integer(90, 150),
    scrub_mm: random.pick([-1, 1]) * random.integer(8, 40),
    forward: random.pick<Forward>([1, -1]),
  }),
  sound: (item) => {
    const rack = rackFrom(item);
    const moment = momentFrom(item, [rack]);
    return between(Math.abs(differenceFrom(item, [rack, moment])), 400, 4000);
  },
  pattern: (item) =>
    `rack ${place(item)} the axis, scrub ${sign(item.scrub_mm, QUANTITIES.scrubRadius)}`,
  question: (item) =>
    phrase`On a test track, braking straight ahead on an even road, the rim of the steering wheel has to be held against ${directed(item.rim_N, 'N', QUANTITIES.axleRimForce)}. The rim is ${mm(item.rim_mm)} across, the power steering divides the torque by ${assistWord(item.assist)}, and one turn moves the rack by ${mm(item.travel_mm)}. The rack lies ${place(item)} the steering axes, which stand upright; each tie rod runs straight across the car, ${mm(item.lever_mm)} from its axis. The brakes sit on the carriers, and the scrub radius is ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. Work back to the difference of the brakes.`,
  picture: (item) => ({ ...onAxle(item) }),
  solved: (item) => {
    const rack = rackFrom(item);
    const moment = momentFrom(item, [rack]);
    const more = differenceFrom(item, [rack, moment]);
    const force = { says: `${rounded(Math.abs(more), 'N', 0).figure} more`, ahead: -1 };
    return {
      ...onAxle(item),
      ...(more > 0 ? { left: force } : { right: force }),
      turns: { both: senseOf(moment), rack: senseOf(rack) },
    };
  },
  wrong: (item, road) =>
    road.part === 'difference'
      ? undefined
      : wrongTurn(onAxle(item), road.part === 'rack' ? 'rack' : 'both', road, {}),
  drawnTrue: ['moment'],
  parts: [
    {
      id: 'rack',
      quantity: QUANTITIES.netRackForce,
      unit: 'N',
      decimals: 0,
      label: 'Force of both rods on the rack',
      value: rackFrom,
      hint: (item) =>
        phrase`Rim force times the radius of the rim is the torque. Undo the gear: what the power steering divided, multiply; then a full circle of 2π over the travel in one turn. The wheels go with the steering wheel; and a rack that lies ${place(item)} the axes?`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * rackFrom(item),
          text: () =>
            phrase`That takes the diameter of the rim for the lever. The hands pull at the rim, and from there to the middle of the column it is the radius, half as far.`,
        },
        {
          id: 'assist-forgotten',
          confuses: 'steering without power',
          value: (item) => rackFrom(item) / item.assist,
          text: () =>
            phrase`That is the rack force of steering without power. Here the hands feel only their share; the power steering holds the rest, and the rack carries both.`,
        },
        {
          id: 'no-circle',
          confuses: 'travel in one turn',
          value: (item) => rackFrom(item) / (2 * Math.PI),
          text: () =>
            phrase`That takes the travel in one turn for the radius of the pinion. The travel is the whole way round it, 2π times the radius.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the rack force',
          value: (item) => -rackFrom(item),
          text: (item) =>
            phrase`The size fits, but the direction of the rack force is turned round. It would be so with a rack that lies ${otherPlace(item)} the axes. With this one the rack goes ${item.forward > 0 ? 'the way' : 'against the way'} the wheels turn.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Torque at the rim, back through power steering and pinion, with 2π = ${bare(2 * Math.PI, 4)}: ${given(Math.abs(item.rim_N), 'N')} · ${given(item.rim_mm / 2000, 'm')} · ${bare(item.assist, 0)} · ${bare(2 * Math.PI, 4)} ÷ ${given(item.travel_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}. The wheels are turned the way the rim is, and a rack ${place(item)} the axes ${item.forward > 0 ? 'goes that way too' : 'goes the other way'}: ${sign(value, QUANTITIES.netRackForce)}.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment of both wheels together',
      value: momentFrom,
      hint: () =>
        phrase`The rods hold what the two wheels leave over. Force times the lever of a rod is the moment; and the wheels turn the way the rim is turned.`,
      slips: [
        {
          id: 'divided',
          confuses: 'dividing by the lever',
          value: (item, earlier) => momentFrom(item, earlier) / lever(item) ** 2,
          text: () =>
            phrase`That comes from dividing by the lever, the way from a moment to a force. Here the force is known and the moment asked for: multiply.`,
        },
        {
          id: 'both-rods',
          confuses: 'two rods',
          value: (item, earlier) => 2 * momentFrom(item, earlier),
          text: () =>
            phrase`That counts the force for each of the two rods. It is what both together leave on the rack, so it is there only once.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * momentFrom(item, earlier),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever of the rod has to be in metres.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the moment',
          value: (item, earlier) => -momentFrom(item, earlier),
          text: (item) =>
            phrase`The size fits, but the direction of the moment is turned round. The steering wheel always turns with the road wheels; only the rack may go the other way, when it lies behind. Here it lies ${place(item)} the axes.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Force times lever: ${rounded(Math.abs(step(earlier, 0)), 'N', 1)} · ${given(item.lever_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, QUANTITIES.steeringMoment)}, as the rim is.`,
    },
    {
      id: 'difference',
      quantity: OWN_QUANTITIES.brakeDifference,
      unit: 'N',
      decimals: 0,
      label: 'Difference of the braking forces, left less right',
      value: differenceFrom,
      hint: () =>
        phrase`The difference of the forces times the scrub radius is the moment. Which tyre, pulled harder, would turn the wheels that way, with the axis on that side of it?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (item, earlier) => -differenceFrom(item, earlier),
          text: ({ scrub_mm }) =>
            phrase`The size fits, but left and right have changed places. It would be so with the axis on the other side of the tyres. It meets the road ${sign(scrub_mm, QUANTITIES.scrubRadius)} of the contact centre: try which tyre has to be pulled harder.`,
        },
        {
          id: 'rod-lever',
          confuses: 'lever of the rod',
          value: (item, earlier) => (Math.sign(scrub(item)) * step(earlier, 1)) / lever(item),
          text: () =>
            phrase`That divides by the lever of the rod, and leads back to the rack. At the road the lever is the scrub radius, far shorter, so the force is far larger.`,
        },
        {
          id: 'halved',
          confuses: 'shared between the wheels',
          value: (item, earlier) => differenceFrom(item, earlier) / 2,
          text: () =>
            phrase`That has the difference shared between the wheels: how far each is from their mean. What is asked for is how much one brake has more than the other.`,
        },
        {
          id: 'multiplied',
          confuses: 'multiplying by the scrub radius',
          value: (item, earlier) => step(earlier, 1) * scrub(item),
          text: () =>
            phrase`That comes from multiplying by the scrub radius. A force times a lever makes a moment; here the moment is known and the force is asked for, so divide.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Moment over scrub radius: ${term(rounded(step(earlier, 1), 'Nm', 4))} ÷ ${term(given(item.scrub_mm / 1000, 'm'))} = ${rounded(value, 'N', 1)}. The ${value > 0 ? 'left brake pulls harder, the right one is the weaker' : 'right brake pulls harder, the left one is the weaker'}, and the car is pulled to the ${value > 0 ? 'left' : 'right'}.`,
    },
  ],
};
