/** From the rack to the driver's hands. */
export interface SteeringGear {
  /** Rack travel in one turn of the steering wheel, in metres, more than 0. */
  readonly travelPerTurn: number;
  /** Radius of the steering wheel's rim, in metres, more than 0. */
  readonly rimRadius: number;
  /** By how much the gear's power assistance divides the torque; 1 without any. More than 0. */
  readonly assist: number;
}

/**
 * Torque at the steering wheel, rack force × (rack travel per turn)/2π ÷ assist factor, in N·m.
 *
 * Friction of rack and column is left out; an efficiency η can stand in for the assist factor.
 *
 * @param rackForce in newtons, positive to the left; the torque has the same sign
 *
 * Source: equal work at both ends of the gear in one turn.
 */
export const handwheelTorque = (
  rackForce: number,
  { travelPerTurn, assist }: Pick<SteeringGear, 'travelPerTurn' | 'assist'>,
): number => (rackForce * travelPerTurn) / (2 * Math.PI * assist);

/**
 * Force at the rim of the steering wheel, torque ÷ rim radius, in newtons, with the sign of the torque.
 *
 * @param torque in N·m
 */
export const rimForce = (torque: number, { rimRadius }: Pick<SteeringGear, 'rimRadius'>): number =>
  torque / rimRadius;
