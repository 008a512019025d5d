import { hubLoads, type Hub, type HubLoads } from '#core/bearing/hub.ts';
import { rowPitch } from '#core/bearing/pressure-centre.ts';
import { loadLineCrossing, tiltingMoment, type WheelLoad } from '#core/bearing/rows.ts';
import { inducedThrust } from '#core/bearing/thrust.ts';
import type { BearingQuantity } from '#core/bearing-quantities.ts';
import { outboardSign, type Corner } from '#core/corner.ts';
import type { LoadId } from '../parameters.ts';
import type { SetLoad } from './loads.ts';

/** The wheel bearing of a corner as the reader has set it. */
export interface BearingStanding {
  readonly corner: Corner;
  /** Its load line where spacer and wheel have brought it. */
  readonly hub: Hub;
  /** In metres. */
  readonly pitchDiameter: number;
  readonly loads: readonly SetLoad[];
}

/** A quantity of the wheel bearing under wheel load and side force, in SI. */
export function byBearing(id: BearingQuantity, now: BearingStanding): number {
  const { hub, pitchDiameter, corner } = now;
  const { contactAngle } = hub.outboard;
  const load = wheelLoad(now);
  switch (id) {
    case 'contactAngle':
      return contactAngle;
    case 'pitchDiameter':
      return pitchDiameter;
    case 'rowPitch':
      return rowPitch(hub.spread, pitchDiameter, contactAngle);
    case 'pressureCentreSpread':
      return hub.spread;
    case 'loadLineOffset':
      return hub.loadLineOffset;
    case 'loadCrossing':
      // A wheel without load has no such line; the load line is then as good as any.
      return load.vertical > 0
        ? loadLineCrossing(hub, load, corner.loadedRadius)
        : hub.loadLineOffset;
    case 'sideForce':
      return load.inward;
    case 'loadTilt':
      return tiltingMoment(hub, { ...load, inward: 0 }, corner.loadedRadius);
    case 'sideTilt':
      return tiltingMoment(hub, { ...load, vertical: 0 }, corner.loadedRadius);
    case 'tilt':
      return tiltingMoment(hub, load, corner.loadedRadius);
    case 'outboardRadial':
      return bearingLoads(now).radial.outboard;
    case 'inboardRadial':
      return bearingLoads(now).radial.inboard;
    case 'outboardInduced':
      return inducedThrust(bearingLoads(now).radial.outboard, hub.outboard.factors);
    case 'inboardInduced':
      return inducedThrust(bearingLoads(now).radial.inboard, hub.inboard.factors);
    case 'outboardThrust':
      return bearingLoads(now).thrust.outboard;
    case 'inboardThrust':
      return bearingLoads(now).thrust.inboard;
  }
}

/** What both rows carry. */
export const bearingLoads = (now: BearingStanding): HubLoads =>
  hubLoads(now.hub, wheelLoad(now), now.corner.loadedRadius);

/** What the ground does to the tyre; of a side force to the left, toward the car on a right wheel. */
export function wheelLoad({ corner, loads }: Pick<BearingStanding, 'corner' | 'loads'>): WheelLoad {
  const forceOf = (id: LoadId): number => loads.find((load) => load.id === id)?.force ?? 0;
  return { vertical: forceOf('weight'), inward: 0 - outboardSign(corner.side) * forceOf('side') };
}
