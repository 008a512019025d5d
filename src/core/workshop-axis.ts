import { contactCentre, heading, outboard, outboardSign, type Corner } from './corner.ts';
import type { Line } from './line.ts';
import { along, direction, vector } from './vector.ts';

/** A steering axis as an alignment sheet and a tape measure give it: radians and metres. */
export interface WorkshopAxis {
  /** Steering-axis inclination σ: positive when the axis top leans inboard; below 90° either way. */
  readonly inclination: number;
  /** Caster angle τ: positive when the axis top leans rearward; below 90° either way. */
  readonly caster: number;
  /** Scrub radius r: positive when the axis meets the ground inboard of the contact centre. */
  readonly scrubRadius: number;
  /** Mechanical trail n: positive when the axis meets the ground ahead of the contact centre. */
  readonly trail: number;
}

/**
 * The steering axis from what a workshop measures: u is parallel to (−tan τ, ∓tan σ, 1), and the axis meets
 * the ground at G = P − r e_y + n e_x. Its point is G: where the pivots are stays unknown.
 *
 * @param wheel the corner without its axis, straight ahead
 *
 * Source: the definitions in geometry.ts, solved for the axis.
 */
export function workshopAxis(
  wheel: Pick<Corner, 'side' | 'wheelCentre' | 'spin' | 'loadedRadius'>,
  { inclination, caster, scrubRadius, trail }: WorkshopAxis,
): Line {
  const inboard = outboardSign(wheel.side) * Math.tan(inclination);
  const beside = along(contactCentre(wheel), -scrubRadius, outboard(wheel));
  return {
    point: along(beside, trail, heading(wheel)),
    direction: direction(vector(-Math.tan(caster), -inboard, 1)),
  };
}
