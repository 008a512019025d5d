/** What the faces of wheel and hub have to hold by friction, and with what. SI. */
export interface Grip {
  /** Torque that wheel and hub try to turn against each other with, in newton metres. */
  readonly torque: number;
  /** Force across the faces, in newtons: braking force and wheel load together. */
  readonly force: number;
  /** Radius of the circle of fasteners, near which the faces press, in metres. */
  readonly circleRadius: number;
  readonly count: number;
  /** Coefficient of friction between the faces. */
  readonly friction: number;
}

/**
 * Friction force that the place at the hardest-worked fastener has to give, in newtons: T/(n r) + V/n, where the
 * force and the pull of the torque point the same way.
 *
 * Source: shear joints under an eccentric load, Shigley’s Mechanical Engineering Design, chapter 8 (from memory).
 */
export const gripAtWorst = ({ torque, force, circleRadius, count }: Grip): number =>
  (Math.abs(torque) / circleRadius + Math.abs(force)) / count;

/**
 * Clamp load of each fastener below which the faces begin to slip there: (T/r + V)/(n μ), in newtons. The
 * fasteners themselves are taken to carry nothing across, nor does the spigot; a side force, which lifts the
 * wheel off its face on one side, is left out.
 *
 * @throws RangeError where friction, radius or count are not above 0
 *
 * Source: as above, with Coulomb’s friction.
 */
export function clampToGrip(grip: Grip): number {
  const { friction, circleRadius, count } = grip;
  if (!(friction > 0 && circleRadius > 0 && count > 0)) {
    throw new RangeError(
      `friction ${friction}, radius ${circleRadius} m, count ${count}; allowed: each above 0`,
    );
  }
  return gripAtWorst(grip) / friction;
}
