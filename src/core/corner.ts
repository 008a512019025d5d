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

/** +1 on a left corner, −1 on a right one: the way outboard along Y. */
export const outboardSign = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

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

/**
 * How much of the spin axis lies level, |s − (s·k)k|: the cosine of the camber.
 *
 * @throws RangeError for a wheel that lies flat: it has no heading
 */
function levelPart({ x, y }: Vector): number {
  const level = Math.sqrt(x * x + y * y);
  if (!(level > 1e-12)) throw new RangeError('a wheel that lies flat has no heading');
  return level;
}

/** The wheel's heading e_x = ±(s × k)/|s × k|: level, in the wheel plane, forward. Length 1. */
export function heading({ side, spin }: Pick<Corner, 'side' | 'spin'>): Vector {
  const scale = outboardSign(side) / levelPart(spin);
  return vector(scale * spin.y, -scale * spin.x, 0);
}

/** The level direction across the wheel, e_y = ±(k × e_x), pointing outboard: the spin axis laid level. Length 1. */
export function outboard({ spin }: Pick<Corner, 'spin'>): Vector {
  const level = levelPart(spin);
  return vector(spin.x / level, spin.y / level, 0);
}

/** The downward direction in the wheel plane, d = −(k − (k·s)s)/|k − (k·s)s|. Length 1. */
export function downInWheelPlane(spin: Vector): Vector {
  const level = levelPart(spin);
  const lean = spin.z / level;
  return vector(lean * spin.x, lean * spin.y, -level);
}

/** Contact centre P = C + R d: where the wheel plane meets the ground below the wheel centre. */
export const contactCentre = ({
  wheelCentre,
  spin,
  loadedRadius,
}: Pick<Corner, 'wheelCentre' | 'spin' | 'loadedRadius'>): Vector =>
  along(wheelCentre, loadedRadius, downInWheelPlane(spin));
