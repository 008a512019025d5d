import type { Entry } from './entry';
import { COMMON, ISO_8855 } from './term-sources';

/** Terms of the angles of a corner, and of how they are read and set. */
export const ALIGNMENT_TERMS = [
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
    id: 'swing',
    term: 'Swing',
    aliases: ['steering swing', 'caster swing', 'caster sweep'],
    meaning:
      'Turning a wheel on its turn plate by the same angle in and out, and reading a gauge on it at both ends: from the difference follow caster (by the camber) and inclination (with the brake held, by a bar across the wheel).',
    source: COMMON,
    lesson: 'the-wheel-turns',
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
