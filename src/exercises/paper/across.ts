import { momentOf } from '#core/action.ts';
import { outboardSign, type Side } from '#core/corner.ts';
import { actionOf, type LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { cornerAtRoad } from './corner.ts';

/** A wheel's axis where it meets the road, in metres and radians; no scrub radius, no caster. */
interface AtRoad {
  readonly trail: number;
  readonly inclination?: number;
}

/** Moment of a force across the tyre about the axis, in N·m, to the left positive. */
export const sideMoment = (
  side: Side,
  axis: AtRoad,
  force: number,
  pneumaticTrail: number,
): number => moment(side, axis, { kind: 'lateral', force, pneumaticTrail });

/** How much a newton of wheel load turns a wheel about its axis, in metres. */
export const leverOfLoad = (axis: AtRoad): number =>
  Math.abs(moment('left', axis, { kind: 'vertical', force: 1 }));

/** Moment of a wheel load on a lever that is known, in N·m: it turns each front wheel toe-in. */
export const loadMoment = (side: Side, load: number, lever: number): number =>
  -outboardSign(side) * load * lever;

function moment(side: Side, axis: AtRoad, load: LoadCase): number {
  const left = cornerAtRoad(axis);
  const corner = side === 'left' ? left : mirroredCorner(left);
  return momentOf(corner, actionOf(corner, load));
}
