import type { Entry } from './entry';
import { COMMON, ISO_8855 } from './term-sources';

/** Terms of what the road does to a tyre across the wheel, upward, and at a standstill. */
export const TYRE_FORCE_TERMS = [
  {
    id: 'pneumatic-trail',
    term: 'Pneumatic trail',
    aliases: ['tyre trail'],
    meaning:
      'How far behind the contact centre a tyre takes a side force. It comes from the rubber and dies away as the tyre nears its limit.',
    source: 'Pacejka, Tire and Vehicle Dynamics (from memory)',
    quantity: 'pneumaticTrail',
    lesson: 'side-weight-parking',
  },
  {
    id: 'print',
    term: 'Print',
    aliases: ['contact patch', 'footprint', 'tyre contact area'],
    meaning: 'The part of the tread that stands on the road.',
    source: COMMON,
    lesson: 'side-weight-parking',
  },
  {
    id: 'self-return',
    term: 'Self-return',
    aliases: ['self-centring', 'returnability', 'self-centering'],
    meaning:
      'What turns steered wheels back to straight ahead: on the move the side force behind the axis, at any speed the weight, since steering lifts the front of the car.',
    source: COMMON,
    quantity: 'selfReturn',
    lesson: 'side-weight-parking',
  },
  {
    id: 'side-force',
    term: 'Side force',
    aliases: ['lateral force', 'cornering force'],
    meaning:
      'What the road does to a tyre across the wheel, in a bend toward its inside. Positive to the left of the car.',
    source: ISO_8855,
    lesson: 'side-weight-parking',
  },
  {
    id: 'yaw-moment',
    term: 'Yaw moment',
    aliases: ['yawing moment', 'turning moment on the car'],
    meaning:
      'Moment that turns the whole car about an upright line, as unequal braking forces left and right do. Positive when it turns the car to the left.',
    source: 'ISO 8855:2011 for the axis and its sign (from memory)',
    quantity: 'yawMoment',
    lesson: 'left-against-right',
  },
] as const satisfies readonly Entry[];
