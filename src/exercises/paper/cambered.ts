import { downInWheelPlane, spinAxis, type Corner, type Pivots } from '#core/corner.ts';
import { lineThrough } from '#core/line.ts';
import { along, vector } from '#core/vector.ts';

/** What an exercise says of a wheel that is to get another camber: radians and metres. */
interface Said {
  readonly inclination: number;
  readonly camber: number;
  readonly scrubRadius: number;
  /** Height of the lower pivot above the road. */
  readonly lowerUp: number;
  readonly loadedRadius: number;
}

/** Half a track, and how far the upper pivot lies above the lower one: neither is in the answers. */
const OUT = 0.75;
const RISE = 0.6;

/** A left corner without caster and toe, its pivots where scrub radius, inclination and height put them. */
export function cornerToCamber(said: Said): Corner & { readonly pivots: Pivots } {
  const { inclination, camber, scrubRadius, lowerUp, loadedRadius } = said;
  const spin = spinAxis('left', camber, 0);
  const lean = Math.tan(inclination);
  const lower = vector(0, OUT - scrubRadius - lowerUp * lean, lowerUp);
  const upper = vector(0, lower.y - RISE * lean, lowerUp + RISE);
  return {
    side: 'left',
    wheelCentre: along(vector(0, OUT, 0), -loadedRadius, downInWheelPlane(spin)),
    spin,
    loadedRadius,
    axis: lineThrough(lower, upper),
    pivots: { lower, upper },
  };
}
