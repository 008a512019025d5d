import { rimForce } from '#core/handwheel.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { rackForce } from '#core/tie-rod.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { gear, otherPlace, place, type Gear } from '../paper/gear.ts';
import {
  assistWord,
  rodAt,
  torquePerNewton,
  type Assist,
  type Forward,
} from '../paper/steering.ts';
import { bare, deg, directed, given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import { senseOf } from '../pictures/axle-pictures.ts';
import type { AxlePicture } from '../pictures/picture.ts';

interface Item extends Gear {
  readonly rod_N: number;
  readonly angle_deg: number;
}

const angle = ({ angle_deg }: Item): number => si(angle_deg, 'deg');
const rod = ({ rod_N }: Item): number => si(rod_N, 'N');
const onRack = kept((item: Item): number => rackForce(rodAt(angle(item)), rod(item)));
const torqueOfRack = kept((item: Item): number => torquePerNewton(item.forward, gear(item)));
const inHands = (item: Item, force: number): number => force * torqueOfRack(item);
const atRim = (item: Item, torque: number): number => rimForce(torque, gear(item));
const half_m = ({ rim_mm }: Item): number => rim_mm / 2000;

/** The left rod, which the question says is pulled or pushed. */
const onRod = (item: Item): AxlePicture => ({
  scene: 'axle',
  one: true,
  scrub_mm: 0,
  rack: item.forward > 0 ? 'ahead' : 'behind',
  rodAngle: angle(item),
  turns: { rod: item.rod_N > 0 ? 'tension' : 'compression' },
});

/** From the tie rod over rack and pinion to the driver's hands. */
export const rimForceFromRod: Kind<Item> = {
  id: 'rim-force-from-rod',
  version: 1,
  title: 'From the tie rod to the rim',
  lesson: 'from-axis-to-hands',
  level: 2,
  draw: (random) => ({
    rod_N: random.pick([-1, 1]) * random.grid(800, 3000, 50),
    angle_deg: random.integer(18, 30),
    travel_mm: random.integer(40, 60),
    rim_mm: random.grid(350, 400, 10),
    assist: random.pick<Assist>([3, 4, 5]),
    forward: random.pick<Forward>([1, -1]),
  }),
  sound: () => true,
  pattern: (item) => `rack ${place(item)} the axis`,
  question: (item) =>
    phrase`The left front wheel has been turned well to one side when it meets a kerb. Its tie rod carries ${directed(item.rod_N, 'N', QUANTITIES.rodForce)}. The rack lies ${place(item)} the steering axis, and seen from above the rod stands at ${deg(item.angle_deg)} to it. One turn of the steering wheel moves the rack by ${mm(item.travel_mm)}. The power steering divides the torque by ${assistWord(item.assist)}, and the rim of the steering wheel is ${mm(item.rim_mm)} across.`,
  picture: (item) => onRod(item),
  solved: (item) => ({
    ...onRod(item),
    turns: { ...onRod(item).turns, rack: senseOf(onRack(item)) },
  }),
  wrong: (item, road) =>
    road.part === 'rack' && road.value * road.answer < 0
      ? {
          ...onRod(item),
          turns: { ...onRod(item).turns, rack: senseOf(road.answer) },
          wrong: { rack: senseOf(road.value) },
        }
      : undefined,
  parts: [
    {
      id: 'rack',
      quantity: QUANTITIES.rackForce,
      unit: 'N',
      decimals: 0,
      label: 'Force of this rod on the rack',
      value: onRack,
      hint: () =>
        phrase`Only the share of the rod’s force along the rack moves the rack. Draw the rod as the slanted side of a right-angled triangle. And which way does a rod in tension pull the rack?`,
      slips: [
        {
          id: 'angle-forgotten',
          confuses: 'angle of the rod',
          value: (item) => Math.sign(onRack(item)) * Math.abs(rod(item)),
          text: () =>
            phrase`That leaves out the angle of the rod. It would be right with the rod in line with the rack. At this angle some of its force only presses the rack into its bush.`,
        },
        {
          id: 'sine',
          confuses: 'share across the rack',
          value: (item) => rod(item) * Math.sin(angle(item)),
          text: () =>
            phrase`That is the share across the rack, from the sine: it presses the rack into its bush. The share along the rack lies beside the angle, so it takes the cosine.`,
        },
        {
          id: 'divided',
          confuses: 'dividing by the cosine',
          value: (item) => rod(item) / Math.cos(angle(item)),
          text: () =>
            phrase`That comes from dividing by the cosine, and makes more of the force than there is in the rod. It would be right if the rack force were known and the rod force asked for.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the rack force',
          value: (item) => -onRack(item),
          text: ({ rod_N }) =>
            phrase`The size fits, but the direction of the rack force is turned round. It would be so at the right wheel. This rod comes from the left and is ${sign(rod_N, QUANTITIES.rodForce)}: it ${rod_N > 0 ? 'pulls the rack toward its wheel' : 'pushes the rack away from its wheel'}.`,
        },
      ],
      solution: ({ rod_N, angle_deg }, _earlier, value) =>
        phrase`The share along the rack: ${given(Math.abs(rod_N), 'N')} · cos ${deg(angle_deg)} = ${rounded(Math.abs(value), 'N', 1)}. A rod ${sign(rod_N, QUANTITIES.rodForce)} on the left side ${value > 0 ? 'pulls the rack to the left' : 'pushes the rack to the right'}.`,
    },
    {
      id: 'torque',
      quantity: QUANTITIES.handwheelTorque,
      unit: 'Nm',
      decimals: 2,
      label: 'Torque at the steering wheel, with power steering',
      value: (item, earlier) => inHands(item, step(earlier, 0)),
      hint: (item) =>
        phrase`In one turn the rack does as much work as the hands: force times travel against torque times a full circle. Then the power steering takes its share. With a rack ${place(item)} the axis, which way does the rack go when the wheels turn to the left?`,
      slips: [
        {
          id: 'no-circle',
          confuses: 'travel in one turn',
          value: (item, earlier) => 2 * Math.PI * inHands(item, step(earlier, 0)),
          text: () =>
            phrase`That takes the travel in one turn for the radius of the pinion. The travel is the whole way round it: divide by 2π to have the radius.`,
        },
        {
          id: 'assist-multiplied',
          confuses: 'power steering',
          value: (item, earlier) => inHands(item, step(earlier, 0)) * item.assist ** 2,
          text: () =>
            phrase`That multiplies by the factor of the power steering. It would be right on the way from the hands to the rack, which feels more than the hands give. On the way back the hands feel less: divide.`,
        },
        {
          id: 'assist-forgotten',
          confuses: 'steering without power',
          value: (item, earlier) => inHands(item, step(earlier, 0)) * item.assist,
          text: () =>
            phrase`That is the torque of steering without power, as with the engine off. Here the power steering holds most of it; the hands have to hold the rest.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the steering wheel',
          value: (item, earlier) => -inHands(item, step(earlier, 0)),
          text: (item) =>
            phrase`The size fits, but the direction of the steering wheel is turned round. It would be so with a rack that lies ${otherPlace(item)} the axis. The steering wheel turns the way the road wheels do; with a rack ${place(item)} the axis the rack goes ${item.forward > 0 ? 'that way too' : 'the other way'}.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Force times travel, over a full circle of 2π = ${bare(2 * Math.PI, 4)}, over the power steering: ${rounded(Math.abs(step(earlier, 0)), 'N', 1)} · ${given(item.travel_mm / 1000, 'm')} ÷ ${bare(2 * Math.PI, 4)} ÷ ${bare(item.assist, 0)} = ${rounded(Math.abs(value), 'Nm', 2)}. With the rack ${place(item)} the axis the road wheels turn ${item.forward > 0 ? 'the way' : 'against the way'} the rack goes, and the steering wheel turns with the road wheels: ${sign(value, QUANTITIES.handwheelTorque)}.`,
    },
    {
      id: 'rim',
      quantity: QUANTITIES.rimForce,
      unit: 'N',
      decimals: 1,
      label: 'Force at the rim of the steering wheel',
      value: (item, earlier) => atRim(item, step(earlier, 1)),
      hint: () =>
        phrase`How far are the hands from the middle of the steering wheel? Torque over that distance is what they have to hold.`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter of the rim',
          value: (item, earlier) => atRim(item, step(earlier, 1)) / 2,
          text: () =>
            phrase`That divides by the diameter of the rim, as if the steering wheel turned about the far side of its own rim. It turns about its middle: the lever of the hands is the radius.`,
        },
        {
          id: 'multiplied',
          confuses: 'radius of the rim',
          value: (item, earlier) => step(earlier, 1) * gear(item).rimRadius,
          text: () =>
            phrase`That multiplies by the radius of the rim. A force at the rim times the radius makes a torque; here the torque is known, so divide.`,
        },
        {
          id: 'assist-again',
          confuses: 'power steering',
          value: (item, earlier) => atRim(item, step(earlier, 1)) / item.assist,
          text: () =>
            phrase`That lets the power steering help a second time. It has taken its share of the torque already; from there to the rim there is only the lever.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction of the pull',
          value: (item, earlier) => -atRim(item, step(earlier, 1)),
          text: () =>
            phrase`The size fits, but the direction of the pull has changed on the way. It would be so for the force that the driver answers with. What is asked for is which way the rim is pulled: the way of the torque.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Torque over radius: ${rounded(Math.abs(step(earlier, 1)), 'Nm', 2)} ÷ ${given(half_m(item), 'm')} = ${rounded(Math.abs(value), 'N', 1)}, ${sign(value, QUANTITIES.rimForce)}.`,
    },
  ],
};
