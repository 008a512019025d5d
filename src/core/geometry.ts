import { outboardSign, stanceOf, type Corner, type Side, type Stance } from './corner.ts';
import { atHeight, distanceToLine, type Line } from './line.ts';
import { dot, minus, type Vector } from './vector.ts';

/** What a corner's drawing can be measured for: angles in radians, lengths in metres. */
export interface Geometry {
  /** Steering-axis inclination σ (kingpin inclination): positive when the axis top leans inboard. */
  readonly inclination: number;
  /** Caster angle τ: positive when the axis top leans rearward. */
  readonly caster: number;
  /** Camber γ: positive when the wheel top leans outboard. */
  readonly camber: number;
  /** Included angle σ + γ. */
  readonly includedAngle: number;
  /** Scrub radius r (kingpin offset at the ground): positive when the axis meets the ground inboard of the contact centre. */
  readonly scrubRadius: number;
  /** Mechanical trail n (caster offset at the ground): positive when the axis meets the ground ahead of the contact centre. */
  readonly trail: number;
  /** Spindle offset q (kingpin offset at the wheel centre): positive when the axis passes inboard of the wheel centre. */
  readonly spindleOffset: number;
  /** Caster offset at the wheel centre n_C: positive when the axis passes ahead of the wheel centre. */
  readonly casterOffsetAtCentre: number;
  /** Shortest distance from the wheel centre to the axis, in space. */
  readonly axisDistance: number;
  /** G: the steering axis at ground height. */
  readonly groundPoint: Vector;
  /** A: the steering axis at wheel-centre height. */
  readonly axisAtCentre: Vector;
  /** P: the contact centre. */
  readonly contactCentre: Vector;
}

/** Steering-axis inclination of an axis, tan σ = −u_y/u_z on a left corner, in radians. */
export const inclinationOf = ({ direction: u }: Line, side: Side): number =>
  Math.atan((-outboardSign(side) * u.y) / u.z);

/** Caster angle of an axis, tan τ = −u_x/u_z, in radians. */
export const casterOf = ({ direction: u }: Line): number => Math.atan(-u.x / u.z);

/** Camber of a wheel from its spin axis, sin γ = −s_z, in radians. */
export const camberOf = (spin: Vector): number =>
  Math.atan2(-spin.z, Math.sqrt(spin.x * spin.x + spin.y * spin.y));

/**
 * Measures a corner as it stands: scrub radius and trail where the axis meets the ground, spindle
 * and caster offset where it passes the wheel centre, and the angles.
 *
 * @param stance of this corner, where it is known already
 *
 * Source of the definitions: ISO 8855:2011 clause 7.2 (from memory).
 */
export function measure(corner: Corner, stance: Stance = stanceOf(corner)): Geometry {
  const { axis, side, wheelCentre, spin } = corner;
  const { ahead, out, contact } = stance;
  const ground = atHeight(axis, contact.z);
  const beside = atHeight(axis, wheelCentre.z);
  const fromGroundPoint = minus(contact, ground);
  const fromAxis = minus(wheelCentre, beside);
  const inclination = inclinationOf(axis, side);
  const camber = camberOf(spin);
  return {
    inclination,
    caster: casterOf(axis),
    camber,
    includedAngle: inclination + camber,
    scrubRadius: dot(fromGroundPoint, out),
    trail: -dot(fromGroundPoint, ahead),
    spindleOffset: dot(fromAxis, out),
    casterOffsetAtCentre: -dot(fromAxis, ahead),
    axisDistance: distanceToLine(axis, wheelCentre),
    groundPoint: ground,
    axisAtCentre: beside,
    contactCentre: contact,
  };
}
