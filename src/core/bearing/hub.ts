import { equivalentLoad } from './equivalent.ts';
import type { Row } from './row.ts';
import { radialLoads, type Rows, type RowSpacing, type WheelLoad } from './rows.ts';
import { inducedThrust, rowThrusts } from './thrust.ts';

/** A two-row hub bearing, rows back to back, with the wheel's load line over it. Metres. */
export interface Hub extends RowSpacing {
  readonly outboard: Row;
  readonly inboard: Row;
}

/** What the rows carry under one wheel load, in newtons. */
export interface HubLoads {
  /** Signed: a negative load has flipped the row's loaded side. */
  readonly radial: Rows<number>;
  readonly thrust: Rows<number>;
  readonly equivalent: Rows<number>;
}

/**
 * Radial loads, thrusts and equivalent loads of both rows under one wheel load.
 *
 * @param loadedRadius R in metres, more than 0
 */
export function hubLoads(hub: Hub, load: WheelLoad, loadedRadius: number): HubLoads {
  const { outboard, inboard } = hub;
  const radial = radialLoads(hub, load, loadedRadius);
  const induced = {
    outboard: inducedThrust(radial.outboard, outboard.factors),
    inboard: inducedThrust(radial.inboard, inboard.factors),
  };
  const thrust = rowThrusts(induced, load.inward);
  const equivalent = {
    outboard: equivalentLoad(radial.outboard, thrust.outboard, outboard.factors),
    inboard: equivalentLoad(radial.inboard, thrust.inboard, inboard.factors),
  };
  return { radial, thrust, equivalent };
}
