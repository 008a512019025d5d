import { engagement, usualEngagement } from '#core/fastening/engagement.ts';
import type { Fixing } from '#core/fastening/fixing.ts';
import { minorDiameter } from '#core/fastening/thread.ts';

/** Where things lie along a fastener, in millimetres outboard of the hub face. */
export interface JointLengths {
  readonly diameter: number;
  /** Half of the thread’s root. */
  readonly root: number;
  readonly spacer: number;
  /** The wheel’s inner face is on the spacer, its seat a wheel’s thickness farther out. */
  readonly seat: number;
  /** The hub’s other face. */
  readonly hubBack: number;
  /** The free end of the thread. */
  readonly tip: number;
  /** Where the threads hold each other, from and to; alike where nothing holds. */
  readonly from: number;
  readonly to: number;
  readonly engaged: number;
  /** Up to where the thread would have to reach for one diameter; none where it does. */
  readonly missingTo: number | undefined;
  readonly missing: number;
}

/** How thick a hub is that studs are pressed into. */
const STUD_HUB = 11;

/** What is shorter than this is a rounding error: micrometres. */
const NOTHING = 1e-6;

/** Lays out a fixing with a spacer, in metres, for a drawing. */
export function jointLengths(fixing: Fixing, spacer: number): JointLengths {
  const mm = (metres: number): number => 1000 * metres;
  const isBolt = fixing.fastener === 'bolt';
  const t = mm(spacer);
  const seat = t + mm(fixing.wheelThickness);
  const engaged = mm(engagement(fixing, spacer));
  const tip = isBolt ? t - mm(fixing.reach) : mm(fixing.wheelThickness + fixing.reach);
  const missing = Math.max(0, mm(usualEngagement(fixing.thread)) - engaged);
  const [from, to] = isBolt ? [-engaged, 0] : [seat, seat + engaged];
  const short = missing > NOTHING;
  return {
    diameter: mm(fixing.thread.diameter),
    root: mm(minorDiameter(fixing.thread)) / 2,
    spacer: t,
    seat,
    hubBack: -(isBolt ? mm(fixing.depth) : STUD_HUB),
    tip,
    from,
    to,
    engaged,
    missingTo: short ? (isBolt ? from - missing : to + missing) : undefined,
    missing: short ? missing : 0,
  };
}
