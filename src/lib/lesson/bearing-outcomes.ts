import type { BearingQuantity } from '#core/bearing-quantities.ts';
import { byBearing, wheelLoad, type BearingStanding } from '#scenes/corner/bearing-values.ts';
import type { BearingOutcomes } from './prediction-slips';

/** What one row has is what the other one has not. */
const OTHER_ROW: Partial<Readonly<Record<BearingQuantity, BearingQuantity>>> = {
  outboardRadial: 'inboardRadial',
  inboardRadial: 'outboardRadial',
  outboardInduced: 'inboardInduced',
  inboardInduced: 'outboardInduced',
  outboardThrust: 'inboardThrust',
  inboardThrust: 'outboardThrust',
};

/** Where wrong roads about a wheel bearing end, once the figure has come to rest. */
export function bearingOutcomes(of: BearingQuantity, now: BearingStanding): BearingOutcomes {
  const { vertical, inward } = wheelLoad(now);
  const other = OTHER_ROW[of];
  const spacing = byBearing('rowPitch', now);
  return {
    wheelLoad: vertical,
    sideForce: Math.abs(inward),
    otherRow: other && byBearing(other, now),
    overRows: byBearing(of, { ...now, hub: { ...now.hub, spread: spacing } }),
    sideTurnedRound: byBearing(of, {
      ...now,
      loads: now.loads.map((load) => (load.id === 'side' ? { ...load, force: -load.force } : load)),
    }),
    ownInduced: ownInduced(of, now),
  };
}

/** The side force on top of a row's own induced thrust, instead of the other row's. */
function ownInduced(of: BearingQuantity, now: BearingStanding): number | undefined {
  const side = Math.abs(wheelLoad(now).inward);
  if (of === 'outboardThrust') return byBearing('outboardInduced', now) + side;
  if (of === 'inboardThrust') return byBearing('inboardInduced', now) + side;
  return undefined;
}
