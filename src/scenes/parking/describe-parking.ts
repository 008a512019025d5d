import { valueText } from '#core/display.ts';
import { measureSentence } from '../corner/describe.ts';
import type { Standing } from '../corner/standing.ts';
import { parameterText } from '../parameter-text.ts';
import type { Setting } from '../setting.ts';
import type { ParkingLook } from './parking-look.ts';
import { SURFACES } from './surfaces.ts';

/** What the drawing of the print shows, in words. */
export function parkingDescription(
  { geometry }: Standing,
  setting: Setting,
  { width_mm, surface, held, units }: ParkingLook,
): string {
  const load = parameterText('weight', setting.weight, units);
  return [
    `The print of a standing tyre from above, ${valueText(width_mm / 1000, 'length', units)} wide, with ${load}, on ${SURFACES[surface].name.toLowerCase()}.`,
    measureSentence('scrubRadius', geometry.scrubRadius, units),
    held
      ? 'The brake is held: turned to the left, the print is dragged round the point where the axis meets the road, and the friction of the road points the other way round on every bit of it.'
      : 'The brake is off: the wheel rolls round the axis, and the print twists about its own middle; the friction of the road points the other way round on every bit of it.',
  ].join(' ');
}
