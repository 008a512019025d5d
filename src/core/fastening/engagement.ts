import type { Fixing } from './fixing.ts';
import type { MetricThread } from './thread.ts';

type Reaching = Pick<Fixing, 'reach' | 'depth'>;

/**
 * Thread engagement: the length over which the two threads hold each other, in metres. A spacer under the same
 * fasteners takes its whole thickness off their reach: h = min(reach − t, depth), and never less than 0.
 *
 * @param spacer thickness t of a plain spacer that the fasteners pass through, in metres, 0 or more
 * @throws RangeError for a negative or missing spacer
 *
 * Source: geometry.
 */
export function engagement({ reach, depth }: Reaching, spacer: number): number {
  if (!(spacer >= 0)) throw new RangeError(`a spacer of ${spacer} m; allowed: 0 or more`);
  return Math.max(0, Math.min(reach - spacer, depth));
}

/** Whole and part turns in a length of thread: h/P. */
export const turnsIn = (length: number, { pitch }: MetricThread): number => length / pitch;

/**
 * The engagement that handbooks ask for in steel: one nominal diameter.
 *
 * Source: workshop handbooks (from memory); makers of hubs and studs may ask for more, soft metals need it.
 */
export const usualEngagement = ({ diameter }: MetricThread): number => diameter;
