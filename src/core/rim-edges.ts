import { outboardSign, type Corner } from './corner.ts';
import { along } from './vector.ts';

/** How far the two edges of a rim lie from the middle plane of the car, at wheel-centre height, in metres. */
export interface RimEdges {
  readonly outer: number;
  readonly inner: number;
}

/**
 * Where a rim ends on either side: half its width from the wheel centre along the spin axis. A wider rim of the
 * same inset takes half of what it gains on each side; spacer and inset move both edges alike.
 *
 * @param rimWidth between the flanges, in metres, more than 0
 * @returns distances from the plane y = 0, positive on the corner's own side
 *
 * Source: geometry; rim widths as in ISO 4000-2 (from memory).
 */
export function rimEdges(
  { wheelCentre, spin, side }: Pick<Corner, 'wheelCentre' | 'spin' | 'side'>,
  rimWidth: number,
): RimEdges {
  const out = (by: number): number => outboardSign(side) * along(wheelCentre, by, spin).y;
  return { outer: out(rimWidth / 2), inner: out(-rimWidth / 2) };
}
