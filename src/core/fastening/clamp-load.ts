import type { MetricThread } from './thread.ts';

/**
 * Clamp load of a fastener from its tightening torque, F = T/(K d), in newtons.
 *
 * @param torque T in newton metres, 0 or more
 * @param nutFactor K: what friction makes of it, 0.1 to 0.4 or so
 * @param thread of which the nominal diameter d counts
 * @throws RangeError for a nut factor that is not above 0
 *
 * Source: Shigley’s Mechanical Engineering Design, chapter 8; NASA RP-1228 (from memory).
 */
export function clampLoad(
  torque: number,
  nutFactor: number,
  { diameter }: Pick<MetricThread, 'diameter'>,
): number {
  if (!(nutFactor > 0)) throw new RangeError(`a nut factor of ${nutFactor}; allowed: above 0`);
  return torque / (nutFactor * diameter);
}

/** The torque for a clamp load, T = K d F, in newton metres: `clampLoad` backwards. */
export const torqueForClamp = (
  clamp: number,
  nutFactor: number,
  { diameter }: Pick<MetricThread, 'diameter'>,
): number => nutFactor * diameter * clamp;

/** What a tightened fastener may really have, in newtons. */
export interface ClampRange {
  readonly least: number;
  readonly most: number;
}

/**
 * The clamp loads that one torque setting leaves behind from fastener to fastener, about a middle F:
 * most/least = α, with least = 2F/(1 + α) and most = 2αF/(1 + α).
 *
 * @param middle F in newtons
 * @param tighteningFactor α, 1 or more: 1.6 for a torque wrench, 2.5 to 4 for an impact wrench
 * @throws RangeError for a factor below 1
 *
 * Source: VDI 2230, tightening factor α_A (from memory).
 */
export function clampRange(middle: number, tighteningFactor: number): ClampRange {
  if (!(tighteningFactor >= 1)) {
    throw new RangeError(`a tightening factor of ${tighteningFactor}; allowed: 1 or more`);
  }
  const least = (2 * middle) / (1 + tighteningFactor);
  return { least, most: tighteningFactor * least };
}
