import { momentOf } from '#core/action.ts';
import { outboardSign, type Corner, type Side } from '#core/corner.ts';
import { actionOf, type LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { NOTHING, times, vector } from '#core/vector.ts';
import { cornerAtCentre, cornerAtRoad } from './corner.ts';

/** A force along the car, and who holds against its spinning the wheel. In newtons. */
export type Along =
  | { readonly by: 'brake'; readonly force: number }
  /** Positive drives, negative holds back. */
  | { readonly by: 'shaft'; readonly force: number }
  /** Rearward. */
  | { readonly by: 'edge'; readonly force: number };

/** Moment about the axis of a left corner, or of its mirror image on the right, in N·m. */
export function momentAlong(left: Corner, side: Side, along: Along): number {
  const corner = side === 'left' ? left : mirroredCorner(left);
  return momentOf(corner, actionOf(corner, loadOf(along)));
}

/** The same where the lever about the axis is known already: an upright axis that far inboard takes all of it. */
export const momentWithLever = (lever: number, side: Side, along: Along): number =>
  momentAlong(
    along.by === 'brake'
      ? cornerAtRoad({ scrubRadius: lever })
      : cornerAtCentre({ spindleOffset: lever }),
    side,
    along,
  );

/** The lever about an axis that leans inboard: how much moment a newton makes, in metres. */
export const leverOf = (corner: Corner, by: Along['by']): number =>
  Math.abs(momentAlong(corner, 'left', { by, force: 1 }));

/** Moment of a brake torque on the carrier, about the spin axis the way the wheel rolls, in N·m. */
export function coupleMoment(left: Corner, side: Side, torque: number): number {
  const { axis, spin, wheelCentre } = side === 'left' ? left : mirroredCorner(left);
  const couple = times(outboardSign(side) * torque, spin);
  return momentOf({ axis }, { force: NOTHING, point: wheelCentre, couple });
}

function loadOf({ by, force }: Along): LoadCase {
  switch (by) {
    case 'brake':
      return { kind: 'brake-on-carrier', force };
    case 'shaft':
      return { kind: 'shaft', force };
    case 'edge':
      return { kind: 'impact', force: vector(-force, 0, 0) };
  }
}
