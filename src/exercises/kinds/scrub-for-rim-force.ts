import { QUANTITIES } from '#core/quantities.ts';
import { rackForce } from '#core/tie-rod.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { gear, otherPlace, place, type Gear } from '../paper/gear.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import {
  assistWord,
  brakeMoment,
  cornerOnRack,
  heldBy,
  torquePerNewton,
  type Assist,
  type Forward,
} from '../paper/steering.ts';
import { between } from '../paper/plausible.ts';
import { bare, directed, given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import { brakeSense, senseOf, wrongTurn } from '../pictures/axle-pictures.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import type { AxlePicture } from '../pictures/picture.ts';

interface Item extends Gear {
  readonly rim_N: number;
  readonly lever_mm: number;
  readonly brake_N: number;
}

const rim = ({ rim_N }: Item): number => si(rim_N, 'N');
const torque = (item: Item): number => rim(item) * gear(item).rimRadius;
const torqueOfRack = kept((item: Item): number => torquePerNewton(item.forward, gear(item)));
const onRack = (item: Item, inHands: number): number => inHands / torqueOfRack(item);
/** Moment about the axis for a newton on the rack to the left: positive turns the wheel to the left. */
const momentPerNewton = kept((item: Item): number => {
  const corner = cornerOnRack(0, si(item.lever_mm, 'mm'), item.forward);
  return 1 / rackForce(corner.tieRod, heldBy(corner, 1));
});
/** Moment about the axis for a metre of scrub radius. */
const momentPerMetre = kept(({ brake_N }: Item): number =>
  brakeMoment(cornerOnRack(1, 0.1, 1), si(brake_N, 'N')),
);
const scrubFrom = (item: Item, force: number): number =>
  (force * momentPerNewton(item)) / momentPerMetre(item);

const onLeft = ({ brake_N, forward }: Item, scrub_mm: number): AxlePicture => ({
  scene: 'axle',
  one: true,
  scrub_mm,
  left: { says: given(brake_N, 'N').figure, ahead: -1 },
  rack: forward > 0 ? 'ahead' : 'behind',
});

/** Backwards from what a driver should feel to the scrub radius that makes it. */
export const scrubForRimForce: Kind<Item> = {
  id: 'scrub-for-rim-force',
  version: 1,
  title: 'How much the hands may feel',
  lesson: 'from-axis-to-hands',
  level: 3,
  draw: (random) => ({
    rim_N: random.pick([-1, 1]) * random.grid(2, 14, 0.5),
    rim_mm: random.grid(350, 400, 10),
    assist: random.pick<Assist>([3, 4, 5]),
    travel_mm: random.integer(40, 60),
    lever_mm: random.integer(90, 150),
    brake_N: random.grid(2500, 4500, 100),
    forward: random.pick<Forward>([1, -1]),
  }),
  sound: (item) => between(1000 * Math.abs(scrubFrom(item, onRack(item, torque(item)))), 5, 55),
  pattern: (item) => `rack ${place(item)} the axis`,
  question: (item) =>
    phrase`On a test only the left front tyre brakes, with ${given(item.brake_N, 'N')}, and the rim of the steering wheel pulls with ${directed(item.rim_N, 'N', QUANTITIES.rimForce)}. The rim is ${mm(item.rim_mm)} across, the power steering divides the torque by ${assistWord(item.assist)}, and one turn moves the rack by ${mm(item.travel_mm)}. The rack lies ${place(item)} the steering axis, which stands upright. The tie rod runs straight across the car, ${mm(item.lever_mm)} from the axis. Work back to the scrub radius.`,
  solved: (item) => {
    const rack = onRack(item, torque(item));
    const scrub = scrubFrom(item, rack);
    return {
      ...onLeft(item, 1000 * scrub),
      turns: { left: brakeSense('left', 1000 * scrub), rack: senseOf(rack) },
      measures: [{ of: 'scrub', says: rounded(Math.abs(scrub), 'mm', 1).figure }],
    };
  },
  wrong: (item, road) => {
    if (road.part === 'scrub')
      return seenBeside(
        { of: 'scrubRadius', says: 'scrub radius', view: 'front', close: 'road' },
        road,
        (value) => cornerAtRoad({ scrubRadius: value }),
      );
    const scrub = scrubFrom(item, onRack(item, torque(item)));
    return road.part === 'rack'
      ? wrongTurn(onLeft(item, 1000 * scrub), 'rack', road, {})
      : undefined;
  },
  drawnTrue: ['rack'],
  parts: [
    {
      id: 'torque',
      quantity: QUANTITIES.handwheelTorque,
      unit: 'Nm',
      decimals: 2,
      label: 'Torque at the steering wheel',
      value: torque,
      hint: () => phrase`The force at the rim, times how far the rim is from the middle.`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter of the rim',
          value: (item) => 2 * torque(item),
          text: () =>
            phrase`That takes the diameter of the rim for the lever. It would be right for two hands pulling opposite ways with that force each. Here it is the force of the rim as a whole: the lever is the radius.`,
        },
        {
          id: 'divided',
          confuses: 'radius of the rim',
          value: (item) => rim(item) / gear(item).rimRadius,
          text: () =>
            phrase`That divides by the radius of the rim, as on the way from a torque to the force. Here the force is known: multiply.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the pull',
          value: (item) => -torque(item),
          text: () =>
            phrase`The size fits, but the direction of the pull has changed on the way. It would be so for what the driver answers with. The torque turns the steering wheel the way the rim is pulled.`,
        },
        {
          id: 'assist-too-soon',
          confuses: 'power steering',
          value: (item) => torque(item) * item.assist,
          text: () =>
            phrase`That has the power steering in it already: it is the torque at the pinion. It will be needed next. What the hands hold is the force at the rim times the radius, no more.`,
        },
      ],
      solution: ({ rim_N, rim_mm }, _earlier, value) =>
        phrase`Force times radius: ${given(Math.abs(rim_N), 'N')} · ${given(rim_mm / 2000, 'm')} = ${rounded(Math.abs(value), 'Nm', 2)}, ${sign(value, QUANTITIES.handwheelTorque)}.`,
    },
    {
      id: 'rack',
      quantity: QUANTITIES.rackForce,
      unit: 'N',
      decimals: 0,
      label: 'Force on the rack',
      value: (item, earlier) => onRack(item, step(earlier, 0)),
      hint: (item) =>
        phrase`Undo the gear: what the power steering divided, multiply; then a full circle of 2π over the travel in one turn. The road wheels turn with the steering wheel; which way is the rack pushed when it lies ${place(item)} the axis?`,
      slips: [
        {
          id: 'no-circle',
          confuses: 'travel in one turn',
          value: (item, earlier) => onRack(item, step(earlier, 0)) / (2 * Math.PI),
          text: () =>
            phrase`That takes the travel in one turn for the radius of the pinion. The travel is the whole way round it, 2π times the radius.`,
        },
        {
          id: 'assist-divided',
          confuses: 'power steering',
          value: (item, earlier) => onRack(item, step(earlier, 0)) / item.assist ** 2,
          text: () =>
            phrase`That divides by the factor of the power steering. It would be right on the way from the rack to the hands. Backwards the rack carries more than the hands show: multiply.`,
        },
        {
          id: 'assist-forgotten',
          confuses: 'steering without power',
          value: (item, earlier) => onRack(item, step(earlier, 0)) / item.assist,
          text: () =>
            phrase`That is the rack force of steering without power. Here the hands feel only their share; the power steering holds the rest, and the rack carries both.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the rack force',
          value: (item, earlier) => -onRack(item, step(earlier, 0)),
          text: (item) =>
            phrase`The size fits, but the direction of the rack force is turned round. It would be so with a rack that lies ${otherPlace(item)} the axis. With this one the rack goes ${item.forward > 0 ? 'the way' : 'against the way'} the road wheels turn.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Back through power steering and pinion, with 2π = ${bare(2 * Math.PI, 4)}: ${rounded(Math.abs(step(earlier, 0)), 'Nm', 4)} · ${bare(item.assist, 0)} · ${bare(2 * Math.PI, 4)} ÷ ${given(item.travel_mm / 1000, 'm')} = ${rounded(Math.abs(value), 'N', 1)}. The steering wheel turns the way the road wheels do, and a rack ${place(item)} the axis ${item.forward > 0 ? 'goes that way too' : 'goes the other way'}: ${sign(value, QUANTITIES.rackForce)}.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius',
      value: (item, earlier) => scrubFrom(item, step(earlier, 1)),
      hint: () =>
        phrase`The rod’s force times its lever is the moment about the axis. The braking force makes the same moment with the scrub radius as its lever. Which side of the tyre is pulled rearward when the wheel turns that way?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -scrubFrom(item, step(earlier, 1)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. A left tyre that is pulled rearward outboard of the axis turns to the left; then the axis is inboard of it.`,
        },
        {
          id: 'upside-down',
          confuses: 'lever of the braking force',
          value: (item, earlier) =>
            ((si(item.lever_mm, 'mm') * si(item.brake_N, 'N')) / step(earlier, 1)) * item.forward,
          text: () =>
            phrase`That divides the wrong way round, and the lever of the braking force comes out longer than the one of the rod. The braking force is the larger of the two, so it needs the shorter lever for the same moment.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both front wheels',
          value: (item, earlier) => scrubFrom(item, step(earlier, 1)) / 2,
          text: () =>
            phrase`That lets both front wheels brake. Here only the left one does, and all that reaches the rack comes from it.`,
        },
        {
          id: 'circle',
          confuses: 'width of the circle',
          value: (item, earlier) => 2 * scrubFrom(item, step(earlier, 1)),
          text: () =>
            phrase`That is the width of the circle on which the tyre scrubs when it is steered on the spot. The lever is from the axis to the tyre: the radius of it.`,
        },
      ],
      solution: (item, earlier, value) => {
        const force = Math.abs(step(earlier, 1));
        const moment = force * si(item.lever_mm, 'mm');
        return phrase`The moment about the axis is ${rounded(force, 'N', 1)} · ${given(item.lever_mm / 1000, 'm')} = ${rounded(moment, 'Nm', 1)}. Over the braking force: ${rounded(moment, 'Nm', 1)} ÷ ${given(item.brake_N, 'N')} = ${rounded(Math.abs(value), 'm', 4)}. That is a scrub radius of ${rounded(Math.abs(value), 'mm', 1)}. The wheel is turned ${sign(item.rim_N, QUANTITIES.rimForce)}, so the axis is ${sign(value, QUANTITIES.scrubRadius)} of the contact centre.`;
      },
    },
  ],
};
