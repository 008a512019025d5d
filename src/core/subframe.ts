import { inclinationOf } from './geometry.ts';
import { lineThrough } from './line.ts';
import { outboardSign, type Corner, type Pivots } from './corner.ts';
import { rotation, turned, turnedAbout } from './rotation.ts';
import { FORWARD, plus, vector } from './vector.ts';

/**
 * The corner after whatever carries its lower pivot and its rack has moved sideways, the upper pivot staying with
 * the body: the axis gets another inclination, and the carrier (C, s, tie rod’s outer end) leans over with it, by the same angle
 * about the line through the lower pivot parallel to X. So the included angle stays.
 *
 * @param shift in metres, positive to the vehicle’s left: outboard on a left corner, inboard on a right one
 */
export function subframeMoved<Some extends Corner & { readonly pivots: Pivots }>(
  corner: Some,
  shift: number,
): Some {
  if (shift === 0) return corner;
  const { side, pivots, wheelCentre, spin, tieRod } = corner;
  const aside = vector(0, shift, 0);
  const lower = plus(pivots.lower, aside);
  const axis = lineThrough(lower, pivots.upper);
  const lean = inclinationOf(axis, side) - inclinationOf(corner.axis, side);
  // Right-handed about X a left wheel’s top goes inboard, which is where a growing inclination takes it.
  const by = rotation(FORWARD, outboardSign(side) * lean);
  return {
    ...corner,
    axis,
    pivots: { lower, upper: pivots.upper },
    wheelCentre: plus(turnedAbout(wheelCentre, pivots.lower, by), aside),
    spin: turned(spin, by),
    tieRod: tieRod && {
      outer: plus(turnedAbout(tieRod.outer, pivots.lower, by), aside),
      inner: plus(tieRod.inner, aside),
    },
  };
}
