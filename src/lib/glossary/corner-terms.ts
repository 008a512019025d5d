import type { Entry } from './entry';
import { COMMON, ISO_8855 } from './term-sources';

/** Terms of the corner: its parts, and where wheel, road and steering axis meet. */
export const CORNER_TERMS = [
  {
    id: 'carrier',
    term: 'Carrier',
    aliases: ['knuckle', 'steering knuckle', 'upright', 'stub axle'],
    meaning:
      'The part that holds the wheel bearing and turns about the steering axis: wheel, brake and steering arm hang on it.',
    source: COMMON,
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
    id: 'inset',
    term: 'Inset',
    aliases: ['offset', 'ET', 'wheel offset'],
    meaning:
      'Distance from the centre plane of the wheel to its mounting face, positive when the face lies outboard of the plane. A wheel of less inset stands farther outboard.',
    source: 'ISO 3911 (from memory)',
    lesson: 'at-the-road',
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
    id: 'pivots',
    term: 'Pivots',
    aliases: ['ball joints', 'king pin', 'swivel'],
    meaning:
      'The two points about which the carrier turns: the centres of the ball joints, or the lower ball joint and the centre of a strut’s top bearing.',
    source: COMMON,
    lesson: 'two-points',
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
    id: 'steering-axis',
    term: 'Steering axis',
    aliases: ['kingpin axis', 'swivel axis', 'king pin'],
    meaning:
      'The straight line through both pivots. The carrier, and the wheel with it, turns about it.',
    source: ISO_8855,
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
] as const satisfies readonly Entry[];
