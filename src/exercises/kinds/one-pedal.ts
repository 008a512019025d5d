import { outboardSign, type Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { momentWithLever } from '../paper/along.ts';
import { cornerWithLevers } from '../paper/corner.ts';
import { given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly motor_N: number;
  readonly friction_N: number;
  /** Levers about the steering axis; the one at the road has the sign of the scrub radius. */
  readonly leverAtCentre_mm: number;
  readonly leverAtRoad_mm: number;
}

const atCentre = ({ leverAtCentre_mm }: Item): number => si(leverAtCentre_mm, 'mm');
const atRoad = ({ leverAtRoad_mm }: Item): number => si(leverAtRoad_mm, 'mm');
const ofMotor = (item: Item, force = item.motor_N): number =>
  momentWithLever(atCentre(item), item.side, { by: 'shaft', force: -force });
const ofFriction = (item: Item, force = item.friction_N): number =>
  momentWithLever(atRoad(item), item.side, { by: 'brake', force });
const motor = kept((item: Item): number => ofMotor(item));
const friction = kept((item: Item): number => ofFriction(item));
const out = ({ side }: Item): number => outboardSign(side);

const byMotor = ({ motor_N }: Item): SeenForce => ({
  at: 'centre',
  force: -motor_N,
  says: given(motor_N, 'N').figure,
});
const byFriction = ({ friction_N }: Item): SeenForce => ({
  at: 'road',
  force: -friction_N,
  says: given(friction_N, 'N').figure,
});

/** One pedal, part recuperation and part friction: each with its own lever. */
export const onePedal: Kind<Item> = {
  id: 'one-pedal',
  version: 1,
  title: 'One pedal, two levers',
  lesson: 'braking-at-the-ground',
  level: 3,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    motor_N: 50 * random.integer(10, 40),
    friction_N: 50 * random.integer(16, 70),
    leverAtCentre_mm: random.integer(48, 85),
    leverAtRoad_mm: random.pick([-1, 1]) * random.integer(6, 28),
  }),
  sound: ({ motor_N, friction_N }) => Math.abs(motor_N - friction_N) > 200,
  pattern: ({ leverAtRoad_mm }) => (leverAtRoad_mm > 0 ? 'axis inboard' : 'axis outboard'),
  question: ({ side, motor_N, friction_N, leverAtCentre_mm, leverAtRoad_mm }) =>
    phrase`An electric car slows down. On the ${side} front wheel the motor holds back with ${given(motor_N, 'N')} at the tyre, through a shaft in line with the wheel, and the caliper on the carrier with another ${given(friction_N, 'N')}. About the steering axis a force along the car has a lever of ${mm(leverAtCentre_mm)} at the height of the wheel centre, with the axis inboard, and of ${mm(Math.abs(leverAtRoad_mm))} at the road, where the axis lies ${sign(leverAtRoad_mm, QUANTITIES.scrubRadius)} of the contact centre.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => cornerWithLevers(atRoad(item), atCentre(item)),
    given: (item) => ({
      measures: [
        { of: 'shortest', says: mm(item.leverAtCentre_mm).figure },
        { of: 'leverAtRoad', says: mm(Math.abs(item.leverAtRoad_mm)).figure },
      ],
    }),
    forces: (item) => [byMotor(item), byFriction(item)],
    parts: {
      motor: { seen: 'moment', force: byMotor },
      friction: { seen: 'moment', force: byFriction },
    },
  }),
  parts: [
    {
      id: 'motor',
      quantity: OWN_QUANTITIES.momentOfRecuperation,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of recuperation about the steering axis',
      value: motor,
      hint: () =>
        phrase`Who holds the torque: the carrier, or the motor at the other end of the shaft? That says which lever counts. Rearward, and the axis inboard: which way?`,
      slips: [
        ...momentSlips(motor),
        {
          id: 'at-the-road',
          confuses: 'lever at the road',
          value: (item) => ofFriction(item, item.motor_N),
          text: () =>
            phrase`That takes the lever at the road, as for the caliper. The motor holds the wheel through the shaft and hands the carrier no torque: its force counts at the wheel centre.`,
        },
        {
          id: 'all-of-the-force',
          confuses: 'whole braking force',
          value: (item) => ofMotor(item, item.motor_N + item.friction_N),
          text: () =>
            phrase`That takes the whole braking force through the shaft. Only the motor’s share goes there; the caliper’s share has a lever of its own.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The motor holds the torque, so its share counts at the wheel centre: ${given(item.motor_N, 'N')} · ${rounded(atCentre(item), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, OWN_QUANTITIES.momentOfRecuperation)}.`,
    },
    {
      id: 'friction',
      quantity: OWN_QUANTITIES.momentOfFriction,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the friction brake about the steering axis',
      value: friction,
      hint: () =>
        phrase`The caliper sits on the carrier and hands the torque over. At which height does its share count, and on which side of the axis is that?`,
      slips: [
        ...momentSlips(friction),
        {
          id: 'at-the-centre',
          confuses: 'lever at the wheel centre',
          value: (item) => ofMotor(item, item.friction_N),
          text: () =>
            phrase`That takes the lever at the wheel centre, as for the motor. The caliper hands the carrier the torque as well, and that brings its force down to the road.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The carrier holds the torque, so the caliper’s share counts at the road: ${given(item.friction_N, 'N')} · ${rounded(Math.abs(atRoad(item)), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, OWN_QUANTITIES.momentOfFriction)}.`,
    },
    {
      id: 'together',
      quantity: OWN_QUANTITIES.momentOfForce,
      unit: 'Nm',
      decimals: 1,
      label: 'Both together',
      value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Add the two with their signs: to the left is positive, to the right negative.`,
      slips: [
        {
          id: 'signs',
          confuses: 'sign of the second moment',
          value: (_item, earlier) => step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`That has the sign of the second moment turned round. Say the direction of each in words first, and then add what goes the same way and take away what goes against it.`,
        },
        {
          id: 'all-at-the-centre',
          confuses: 'wheel centre',
          value: (item) => ofMotor(item, item.motor_N + item.friction_N),
          text: () =>
            phrase`That is the whole braking force at the wheel centre, as if the motor did it alone. The caliper’s share counts at the road.`,
        },
        {
          id: 'all-at-the-road',
          confuses: 'road',
          value: (item) => ofFriction(item, item.motor_N + item.friction_N),
          text: () =>
            phrase`That is the whole braking force at the road, as if the calipers did it alone. The motor’s share counts at the wheel centre.`,
        },
        {
          id: 'levers-added',
          confuses: 'sum of the levers',
          value: (item) =>
            out(item) * (item.motor_N + item.friction_N) * (atCentre(item) + atRoad(item)),
          text: () =>
            phrase`That multiplies the sum of the forces by the sum of the levers. Each force has its own lever: multiply first, then add.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`${term(rounded(step(earlier, 0), 'Nm', 1))} + ${term(rounded(step(earlier, 1), 'Nm', 1))} = ${rounded(value, 'Nm', 1)}: ${sign(value, OWN_QUANTITIES.momentOfForce)}. While the pedal stays where it is, this changes with every newton that goes from one to the other.`,
    },
  ],
};
