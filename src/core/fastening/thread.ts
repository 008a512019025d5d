/** A metric thread of the ISO general profile, single start. Metres. */
export interface MetricThread {
  /** Nominal diameter d: an M14 thread has 14 mm. */
  readonly diameter: number;
  /** From one turn to the next, which is also the way that one whole turn makes. */
  readonly pitch: number;
}

/**
 * Pitch diameter d2 = d − 0.649519 P, where thread and gap are equally wide.
 *
 * Source: ISO 724 (from memory).
 */
export const pitchDiameter = ({ diameter, pitch }: MetricThread): number =>
  diameter - 0.649519 * pitch;

/**
 * Minor diameter of the bolt d3 = d − 1.226869 P, at the bottom of its groove.
 *
 * Source: ISO 898-1:2013, clause 9.1.6.1 (from memory).
 */
export const minorDiameter = ({ diameter, pitch }: MetricThread): number =>
  diameter - 1.226869 * pitch;

/**
 * Nominal stress area A_s = (π/4) ((d2 + d3)/2)², in square metres: what carries the tension in the thread.
 *
 * Source: ISO 898-1:2013, clause 9.1.6.1 (from memory).
 */
export function stressArea(thread: MetricThread): number {
  const mean = (pitchDiameter(thread) + minorDiameter(thread)) / 2;
  return (Math.PI / 4) * mean ** 2;
}
