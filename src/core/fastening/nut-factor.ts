import { pitchDiameter, type MetricThread } from './thread.ts';

/** Where the torque rubs while a fastener is tightened. */
export interface Rubbing {
  /** Coefficient of friction in the thread, and under the head or nut. */
  readonly inThread: number;
  readonly underHead: number;
  /** Mean radius of the face under the head, in metres. */
  readonly headRadius: number;
  /** Half the angle of a conical seat, in radians; a right angle, which is a flat face, unless said. */
  readonly seatHalfAngle?: number;
}

/** What becomes of a tightening torque for each newton of clamp load, in metres. */
export interface TorqueShares {
  /** Pulls the fastener long: P/2π. */
  readonly stretch: number;
  /** Rubs in the thread: 1.154 μ d2/2, from the flank angle of 60° of metric threads. */
  readonly thread: number;
  /** Rubs under the head: μ r, on a cone of half angle α μ r/sin α. */
  readonly head: number;
}

/**
 * Where a tightening torque goes: T = F (P/2π + 1.154 μ_th d2/2 + μ_b r/sin α).
 *
 * @throws RangeError for friction below 0
 *
 * Source: ISO 16047 and VDI 2230 for the flat face (from memory); the cone as a wedge that turns, statics.
 */
export function torqueShares(thread: MetricThread, rubbing: Rubbing): TorqueShares {
  const { inThread, underHead, headRadius, seatHalfAngle = Math.PI / 2 } = rubbing;
  if (!(inThread >= 0 && underHead >= 0)) {
    throw new RangeError(`friction of ${inThread} and ${underHead}; allowed: 0 or more`);
  }
  return {
    stretch: thread.pitch / (2 * Math.PI),
    thread: (1.154 * inThread * pitchDiameter(thread)) / 2,
    head: (underHead * headRadius) / Math.sin(seatHalfAngle),
  };
}

/** The nut factor K of T = K d F that such friction makes. */
export function nutFactor(thread: MetricThread, rubbing: Rubbing): number {
  const { stretch, thread: inThread, head } = torqueShares(thread, rubbing);
  return (stretch + inThread + head) / thread.diameter;
}
