import type { Anatomy } from '#core/car/anatomy.ts';
import type { Corner } from '#core/corner.ts';
import { along, dot, minus, type Vector } from '#core/vector.ts';

/** A wheel as it stands in the way of what lies behind: a tyre as a tube, and the disc that closes it. Metres. */
export interface WheelSolid {
  readonly centre: Vector;
  readonly spin: Vector;
  readonly halfWidth: number;
  readonly inner: number;
  readonly outer: number;
  /** How far outboard of the centre the disc is. */
  readonly disc: number;
}

/** Its edges are drawn, so it ends a little inside of them. */
const SKIN = 0.002;

export const wheelSolid = (
  { wheelCentre, spin }: Pick<Corner, 'wheelCentre' | 'spin'>,
  { tyreWidth, tyreRadius, rimRadius, inset }: Anatomy,
): WheelSolid => ({
  centre: wheelCentre,
  spin,
  halfWidth: tyreWidth / 2000 - SKIN,
  inner: rimRadius / 1000 + SKIN,
  outer: tyreRadius / 1000 - SKIN,
  disc: inset / 1000,
});

/** The closest to a surface that a line of sight may begin. */
const NEAR = 1e-4;

/**
 * Whether a wheel stands between a point and the reader. Along the line of sight the distance from the spin axis
 * is smooth: within the width of the tyre it meets the tube where it is ever between the two radii.
 *
 * @param toward from the drawing toward the reader, length 1
 */
export function hides(solid: WheelSolid, at: Vector, toward: Vector): boolean {
  const from = minus(at, solid.centre);
  const out = dot(from, solid.spin);
  const outward = dot(toward, solid.spin);
  const across = along(from, -out, solid.spin);
  const sideways = along(toward, -outward, solid.spin);
  const radius = (t: number): number => {
    const p = along(across, t, sideways);
    return Math.sqrt(dot(p, p));
  };
  return (
    inTube(solid, out, outward, across, sideways, radius) ||
    throughDisc(solid, out, outward, radius)
  );
}

function inTube(
  { halfWidth, inner, outer }: WheelSolid,
  out: number,
  outward: number,
  across: Vector,
  sideways: Vector,
  radius: (t: number) => number,
): boolean {
  let [enter, leave] = [NEAR, 10];
  if (Math.abs(outward) < 1e-9) {
    if (Math.abs(out) > halfWidth) return false;
  } else {
    const ends = [(-halfWidth - out) / outward, (halfWidth - out) / outward];
    enter = Math.max(enter, Math.min(...ends));
    leave = Math.min(leave, Math.max(...ends));
    if (enter > leave) return false;
  }
  const run = dot(sideways, sideways);
  const nearest = run < 1e-12 ? enter : -dot(across, sideways) / run;
  const least = radius(Math.min(leave, Math.max(enter, nearest)));
  const most = Math.max(radius(enter), radius(leave));
  return least < outer && most > inner;
}

function throughDisc(
  { disc, inner }: WheelSolid,
  out: number,
  outward: number,
  radius: (t: number) => number,
): boolean {
  if (Math.abs(outward) < 1e-9) return false;
  const t = (disc - out) / outward;
  return t > NEAR && radius(t) < inner;
}
