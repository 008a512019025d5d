import { writeShortest } from '#core/write-number.ts';
import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { measureSentence } from '../corner/describe.ts';
import { valueOf, type Standing } from '../corner/standing.ts';
import type { Viewpoint } from './viewpoint.ts';

/** What is told of the corner besides the step's own measures: where its axis lies and how the wheel is turned. */
const ALWAYS: readonly QuantityId[] = ['inclination', 'caster', 'scrubRadius', 'trail', 'steer'];

/** Eight ways round the car, from ahead and on toward its left. */
const WAYS = [
  'from ahead',
  'from ahead and the left',
  'from the left',
  'from behind and the left',
  'from behind',
  'from behind and the right',
  'from the right',
  'from ahead and the right',
] as const;

/** The way round the car that a viewpoint looks from, in words: `from ahead and the left`. */
export const roundWords = ({ round }: Pick<Viewpoint, 'round'>): string =>
  WAYS[((Math.round(round / 45) % 8) + 8) % 8] ?? WAYS[0];

/** How high a viewpoint is, in words: `20° above the road`. */
export const aboveWords = ({ above }: Pick<Viewpoint, 'above'>): string =>
  above > 80 ? 'from above' : `${writeShortest(Math.round(above))}° above the road`;

/** The direction that a viewpoint looks from: `from ahead and the left, 20° above the road`. */
export const viewpointWords = (viewpoint: Viewpoint): string =>
  viewpoint.above > 80
    ? aboveWords(viewpoint)
    : `${roundWords(viewpoint)}, ${aboveWords(viewpoint)}`;

/** What the drawing in space shows, in words. */
export const spaceDescription = (
  now: Standing,
  viewpoint: Viewpoint,
  measures: readonly QuantityId[],
  units: UnitSystem,
): string =>
  [
    `The ${now.corner.side} front corner in space, seen ${viewpointWords(viewpoint)}: wheel and print, carrier and steering arm, tie rod, and the steering axis through both pivots down to the road.`,
    ...[...new Set([...ALWAYS, ...measures])].map((id) =>
      measureSentence(id, valueOf(id, now), units),
    ),
    'The carrier turns about the axis; the axis stays.',
  ].join(' ');
