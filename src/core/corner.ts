import type { Line } from './line.ts';
import { along, vector, type Vector } from './vector.ts';

export type Side = 'left' | 'right';

/** The tie rod between the carrier (outer end) and the rack (inner end), straight ahead. */
export interface TieRod {
  readonly outer: Vector;
  readonly inner: Vector;
}

/** The two points that make a steering axis: ball-joint centres, or a strut's top-bearing centre above. */
export interface Pivots {
  readonly lower: Vector;
  readonly upper: Vector;
}

/**
 * One front corner of a car, straight ahead, in vehicle axes and SI units.
 *
 * The carrier (wheel centre, spin axis, tie rod's outer end) turns about the steering axis; the rest
 * stays with the body. The ground is nowhere in here: it is the level plane through the contact centre.
 */
export interface Corner {
  readonly side: Side;
  /** The steering axis (kingpin axis): through the lower pivot, directed upward. */
  readonly axis: Line;
  /** Where the pivots are known; an axis given by angles alone has none. */
  readonly pivots?: Pivots | undefined;
  readonly wheelCentre: Vector;
  /** Direction of the wheel's spin axis, pointing outboard, length 1. */
  readonly spin: Vector;
  /** From the wheel centre to the contact centre in the wheel plane, in metres. */
  readonly loadedRadius: number;
  readonly tieRod?: TieRod | undefined;
}

/** How a wheel stands on the road: what its offsets and loads are counted by. */
export interface Stance {
  /** e_x, as `heading` gives it. */
  readonly ahead: Vector;
  /** e_y, as `outboard` gives it. */
  readonly out: Vector;
  /** P, as `contactCentre` gives it. */
  readonly contact: Vector;
}

/** +1 on a left corner, −1 on a right one: the way outboard along Y. */
export const outboardSign = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

export const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/**
 * Direction of the spin axis, pointing outboard: (cos γ sin ψ, ±cos γ cos ψ, −sin γ).
 *
 * @param camber γ in radians, positive when the wheel's top leans outboard
 * @param toe ψ in radians, positive for toe-in
 */
export const spinAxis = (side: Side, camber: number, toe: number): Vector =>
  vector(
    Math.cos(camber) * Math.sin(toe),
    outboardSign(side) * Math.cos(camber) * Math.cos(toe),
    -Math.sin(camber),
  );

/** The wheel's heading e_x = ±(s × k)/|s × k|: level, in the wheel plane, forward. Length 1. */
export const heading = ({ side, spin }: Pick<Corner, 'side' | 'spin'>): Vector =>
  aheadOf(side, outboard({ spin }));

/** The level direction across the wheel, e_y = ±(k × e_x), pointing outboard: the spin axis laid level. Length 1. */
export const outboard = ({ spin }: Pick<Corner, 'spin'>): Vector =>
  laidLevel(spin, levelPart(spin));

/** The downward direction in the wheel plane, d = −(k − (k·s)s)/|k − (k·s)s|. Length 1. */
export function downInWheelPlane(spin: Vector): Vector {
  const level = levelPart(spin);
  return downBeside(laidLevel(spin, level), spin.z, level);
}

/** Contact centre P = C + R d: where the wheel plane meets the ground below the wheel centre. */
export const contactCentre = ({
  wheelCentre,
  spin,
  loadedRadius,
}: Pick<Corner, 'wheelCentre' | 'spin' | 'loadedRadius'>): Vector =>
  along(wheelCentre, loadedRadius, downInWheelPlane(spin));

/**
 * Heading, outboard direction and contact centre of a corner as it stands, for those who need them all.
 *
 * @throws RangeError for a wheel that lies flat: it has no heading
 */
export function stanceOf(corner: Corner): Stance {
  const { spin } = corner;
  const level = levelPart(spin);
  const out = laidLevel(spin, level);
  const down = downBeside(out, spin.z, level);
  return {
    ahead: aheadOf(corner.side, out),
    out,
    contact: along(corner.wheelCentre, corner.loadedRadius, down),
  };
}

/**
 * How much of the spin axis lies level, |s − (s·k)k|: the cosine of the camber.
 *
 * @throws RangeError for a wheel that lies flat: it has no heading
 */
function levelPart(spin: Vector): number {
  const level = Math.sqrt(spin.x * spin.x + spin.y * spin.y);
  if (level > 1e-12) return level;
  throw new RangeError('a wheel that lies flat has no heading');
}

/** e_y from the spin axis and its level part. */
const laidLevel = (spin: Vector, level: number): Vector =>
  vector(spin.x / level, spin.y / level, 0);

/** e_x = ±(e_y × k). */
function aheadOf(side: Side, out: Vector): Vector {
  const sign = outboardSign(side);
  return vector(sign * out.y, -sign * out.x, 0);
}

/** d = (s·k) e_y − |s − (s·k)k| k: square to the spin axis, in the upright plane through it. */
const downBeside = (out: Vector, rise: number, level: number): Vector =>
  vector(rise * out.x, rise * out.y, -level);
