import type { Entry } from './entry';
import { COMMON, ISO_8855 } from './term-sources';

/** Terms of how a corner is steered, driven and braked, and of what that does to it. */
export const STEERING_TERMS = [
  {
    id: 'couple',
    term: 'Couple',
    aliases: ['force couple', 'pure torque'],
    meaning:
      'Two equal forces that point in opposite directions along parallel lines: they turn and do not push. A couple has no place; wherever it enters a body, it does the same.',
    source: 'statics (from memory)',
    lesson: 'braking-at-the-ground',
  },
  {
    id: 'free-body',
    term: 'Free body',
    aliases: ['free-body diagram', 'body cut free'],
    meaning:
      'A body drawn by itself, with every force and torque that others exert on it and none that it exerts on others.',
    source: 'statics (from memory)',
    lesson: 'what-the-carrier-feels',
  },
  {
    id: 'lift',
    term: 'Lift',
    aliases: ['jacking'],
    meaning:
      'How far a front corner of the car rises when its wheel is steered, because the tyre cannot go down into the road. Negative where the corner sinks.',
    source: COMMON,
    quantity: 'lift',
    lesson: 'the-wheel-turns',
  },
  {
    id: 'moment',
    term: 'Moment about the steering axis',
    aliases: ['kingpin torque', 'steering-axis torque'],
    meaning:
      'How hard forces and couples on the carrier turn it about the steering axis. Positive when it turns the wheel to the left, on either side of the car: toe-out on a left wheel, toe-in on a right one.',
    source: ISO_8855,
    lesson: 'what-the-carrier-feels',
  },
  {
    id: 'power-steering',
    term: 'Power steering',
    aliases: ['power-assisted steering', 'PAS', 'servo steering'],
    meaning:
      'Pump or motor that helps the driver to move the rack. The hands hold only a share of what the rack carries; tie rods and ball joints carry all of it.',
    source: COMMON,
    lesson: 'from-axis-to-hands',
  },
  {
    id: 'rack',
    term: 'Rack',
    aliases: ['steering rack', 'rack and pinion'],
    meaning:
      'Toothed bar across the car that the pinion of the steering column moves to the left and to the right. A tie rod hangs on each end.',
    source: COMMON,
    lesson: 'from-axis-to-hands',
  },
  {
    id: 'recuperation',
    term: 'Recuperation',
    aliases: ['regenerative braking', 'regen'],
    meaning:
      'Braking with the electric motor, which holds the wheels back through their shafts and charges the battery.',
    source: COMMON,
    lesson: 'braking-at-the-ground',
  },
  {
    id: 'road-wheel-steer',
    term: 'Road-wheel steer',
    aliases: ['steer angle', 'road-wheel angle'],
    meaning:
      'How far a wheel’s heading, seen from above, has turned from straight ahead: what a turn plate shows. Positive to the left.',
    source: ISO_8855,
    quantity: 'steer',
    lesson: 'the-wheel-turns',
  },
  {
    id: 'steering-arm',
    term: 'Steering arm',
    aliases: ['track-rod arm', 'knuckle arm'],
    meaning:
      'Part of the carrier, pointing forward or rearward from the steering axis, on whose end the tie rod is held by a ball joint.',
    source: COMMON,
    lesson: 'from-axis-to-hands',
  },
  {
    id: 'tie-rod',
    term: 'Tie rod',
    aliases: ['track rod'],
    meaning:
      'Rod with a ball joint at each end, between the steering arm and the rack. It only pulls or pushes along its own line, and so holds the wheel from turning about the steering axis.',
    source: COMMON,
    quantity: 'rodForce',
    lesson: 'from-axis-to-hands',
  },
  {
    id: 'torque-steer',
    term: 'Torque steer',
    aliases: ['pulling under power'],
    meaning:
      'Pulling to one side under power: the moments that drive makes about the two steering axes differ, as with shafts of unequal length and angle, or with unequal grip.',
    source: COMMON,
    lesson: 'braking-at-the-ground',
  },
] as const satisfies readonly Entry[];
