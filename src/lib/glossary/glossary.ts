import type { Entry } from './entry';
import { BEARING_TERMS } from './bearing-terms';
import { OWN_CAR_TERMS } from './own-car-terms';
import { TYRE_FORCE_TERMS } from './tyre-force-terms';
import { CHANGE_TERMS } from './change-terms';

const ISO_8855 = 'ISO 8855:2011, clause 7.2 (from memory)';
const COMMON = 'common workshop use';

/** Terms of the corner, and of how it is steered, driven and braked. */
const CORNER_TERMS = [
  {
    id: 'camber',
    term: 'Camber',
    aliases: ['camber angle'],
    meaning:
      'Lean of the wheel seen from the front. Positive when the top of the wheel leans outboard, negative when it leans inboard.',
    source: ISO_8855,
    quantity: 'camber',
    lesson: 'two-points',
  },
  {
    id: 'carrier',
    term: 'Carrier',
    aliases: ['knuckle', 'steering knuckle', 'upright', 'stub axle'],
    meaning:
      'The part that holds the wheel bearing and turns about the steering axis: wheel, brake and steering arm hang on it.',
    source: COMMON,
  },
  {
    id: 'caster',
    term: 'Caster angle',
    aliases: ['caster', 'castor', 'castor angle'],
    meaning:
      'Lean of the steering axis seen from the side. Positive when the top of the axis leans rearward.',
    source: ISO_8855,
    quantity: 'caster',
    lesson: 'two-points',
  },
  {
    id: 'caster-offset',
    term: 'Caster offset at the wheel centre',
    aliases: ['wheel-centre trail', 'axle lead'],
    meaning:
      'How far the steering axis passes ahead of the wheel centre, seen from the side at the height of the wheel centre.',
    source: ISO_8855,
    quantity: 'casterOffsetAtCentre',
    lesson: 'at-the-wheel-centre',
  },
  {
    id: 'contact-centre',
    term: 'Contact centre',
    aliases: ['centre of tyre contact', 'contact patch centre'],
    meaning:
      'The point of the road in the wheel’s centre plane, straight below the wheel centre. Forces on the tyre are counted there.',
    source: ISO_8855,
    lesson: 'at-the-road',
  },
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
    id: 'cross-camber',
    term: 'Cross camber',
    aliases: ['camber difference', 'camber split'],
    meaning:
      'Camber of the left wheel less that of the right one. As far as it goes, the car tends toward the side with the more positive camber.',
    source: COMMON,
    lesson: 'alignment-sheet',
  },
  {
    id: 'cross-caster',
    term: 'Cross caster',
    aliases: ['caster difference', 'caster split'],
    meaning:
      'Caster of the left wheel less that of the right one. As far as it goes, the car tends toward the side with less caster.',
    source: COMMON,
    lesson: 'alignment-sheet',
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
    id: 'included-angle',
    term: 'Included angle',
    aliases: ['combined angle'],
    meaning:
      'Steering-axis inclination and camber added up: the angle between the axis and the wheel. A camber change at the upper pivot leaves it as it is; a bent part does not.',
    source: COMMON,
    quantity: 'includedAngle',
    lesson: 'two-points',
  },
  {
    id: 'inset',
    term: 'Inset',
    aliases: ['offset', 'ET', 'wheel offset'],
    meaning:
      'Distance from the centre plane of the wheel to its mounting face, positive when the face lies outboard of the plane. A wheel of less inset stands farther outboard.',
    source: 'ISO 3911 (from memory)',
    lesson: 'at-the-road',
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
    id: 'loaded-radius',
    term: 'Loaded radius',
    aliases: ['static radius', 'static loaded radius'],
    meaning:
      'Distance from the wheel centre to the contact centre, with the car standing on its tyres.',
    source: ISO_8855,
    quantity: 'loadedRadius',
    lesson: 'at-the-wheel-centre',
  },
  {
    id: 'trail',
    term: 'Mechanical trail',
    aliases: ['trail', 'caster trail', 'caster offset at the ground'],
    meaning:
      'How far the steering axis meets the road ahead of the contact centre, seen from the side. Positive ahead.',
    source: ISO_8855,
    quantity: 'trail',
    lesson: 'at-the-road',
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
    id: 'pivots',
    term: 'Pivots',
    aliases: ['ball joints', 'king pin', 'swivel'],
    meaning:
      'The two points about which the carrier turns: the centres of the ball joints, or the lower ball joint and the centre of a strut’s top bearing.',
    source: COMMON,
    lesson: 'two-points',
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
    id: 'scrub-radius',
    term: 'Scrub radius',
    aliases: ['kingpin offset at the ground', 'steering offset', 'steering roll radius'],
    meaning:
      'Distance across the car between the point where the steering axis meets the road and the contact centre. Positive when the axis meets the road inboard of the contact centre, negative when outboard.',
    source: ISO_8855,
    quantity: 'scrubRadius',
    lesson: 'at-the-road',
  },
  {
    id: 'spindle-offset',
    term: 'Spindle offset',
    aliases: ['kingpin offset at the wheel centre', 'kingpin offset at hub'],
    meaning:
      'Distance across the car between the steering axis and the wheel centre, at the height of the wheel centre. Positive when the axis passes inboard.',
    source: ISO_8855,
    quantity: 'spindleOffset',
    lesson: 'at-the-wheel-centre',
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
    id: 'steering-axis',
    term: 'Steering axis',
    aliases: ['kingpin axis', 'swivel axis', 'king pin'],
    meaning:
      'The straight line through both pivots. The carrier, and the wheel with it, turns about it.',
    source: ISO_8855,
    lesson: 'two-points',
  },
  {
    id: 'inclination',
    term: 'Steering-axis inclination',
    aliases: ['kingpin inclination', 'KPI', 'SAI', 'swivel-pin inclination'],
    meaning:
      'Lean of the steering axis seen from the front. Positive when the top of the axis leans inboard.',
    source: ISO_8855,
    quantity: 'inclination',
    lesson: 'two-points',
  },
  {
    id: 'subframe',
    term: 'Subframe',
    aliases: ['cradle', 'crossmember', 'front axle carrier'],
    meaning:
      'Frame bolted to the body that carries the lower arms, and on many cars the steering rack. If it sits to one side, both front wheels lean the same way across the car.',
    source: COMMON,
    lesson: 'alignment-sheet',
  },
  {
    id: 'swing',
    term: 'Swing',
    aliases: ['steering swing', 'caster swing', 'caster sweep'],
    meaning:
      'Turning a wheel on its turn plate by the same angle in and out, and reading a gauge on it at both ends: from the difference follow caster (by the camber) and inclination (with the brake held, by a bar across the wheel).',
    source: COMMON,
    lesson: 'the-wheel-turns',
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
    id: 'toe',
    term: 'Toe',
    aliases: ['toe-in', 'toe-out', 'tracking'],
    meaning:
      'Angle between the wheel’s heading and the car’s, seen from above with the steering straight. Toe-in, with the front of the wheel nearer to the middle of the car, is positive.',
    source: ISO_8855,
    quantity: 'toe',
    lesson: 'alignment-sheet',
  },
  {
    id: 'tolerance-band',
    term: 'Tolerance band',
    aliases: ['tolerance', 'specification', 'band'],
    meaning:
      'What a maker allows a value of the alignment to be, from its least to its most. The pair of front wheels has bands of its own, for what the two may differ by.',
    source: COMMON,
    lesson: 'alignment-sheet',
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
  {
    id: 'total-toe',
    term: 'Total toe',
    aliases: ['overall toe', 'sum of toe'],
    meaning:
      'Toe of both front wheels added up, toe-in positive. The wheels share it evenly once they roll, because rods and rack tie them together.',
    source: COMMON,
    lesson: 'alignment-sheet',
  },
  {
    id: 'turn-plate',
    term: 'Turn plate',
    aliases: ['turntable', 'turning radius plate'],
    meaning:
      'Plate under a wheel that floats on balls or rollers, so that the wheel can be steered and the tyre can wander without dragging. Its scale shows the heading.',
    source: COMMON,
    lesson: 'the-wheel-turns',
  },
] as const satisfies readonly Entry[];

/** The glossary, in alphabetical order. */
export const GLOSSARY: readonly Entry[] = [
  ...CORNER_TERMS,
  ...TYRE_FORCE_TERMS,
  ...BEARING_TERMS,
  ...CHANGE_TERMS,
  ...OWN_CAR_TERMS,
].sort((a, b) => a.term.localeCompare(b.term, 'en'));

/**
 * The entry of that name.
 *
 * @throws Error for an unknown one: a lesson with a slip of the pen must not build
 */
export function glossaryEntry(id: string): Entry {
  const entry = GLOSSARY.find((one) => one.id === id);
  if (!entry)
    throw new Error(`<Term of="${id}">: allowed are ${GLOSSARY.map((e) => e.id).join(', ')}`);
  return entry;
}
