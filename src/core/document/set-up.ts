import { radians } from '../angle.ts';
import type { WheelRadii } from '../bearing/hub-rating.ts';
import { changed, wheelShift, type Change } from '../change.ts';
import type { Corner } from '../corner.ts';
import { failure, faultsOf, success, type Outcome } from '../fault.ts';
import type { SteeringGear } from '../handwheel.ts';
import type { LoadCase } from '../load-cases.ts';
import type { CornerDocument } from './corner-document.ts';
import { inMetres } from './edge-units.ts';
import { changeOf, faultsOfChange } from './set-up-change.ts';
import { cornerOf } from './set-up-corner.ts';
import { loadCasesOf } from './set-up-forces.ts';
import { ratedHubOf, type RatedHub } from './set-up-hub.ts';
import { gearOf } from './set-up-steering.ts';

/** A corner document in SI units, with its change made: what `solve` works on, and what figures can draw. */
export interface CornerSetup {
  /** Straight ahead, as the document gives it. */
  readonly before: Corner;
  /** Straight ahead, with the change. */
  readonly corner: Corner;
  readonly change: Change;
  /** Of the wheel, with the change. */
  readonly radii: WheelRadii;
  /** θ about the steering axis in radians, positive to the left. */
  readonly rotation: number;
  readonly loads?: readonly LoadCase[] | undefined;
  readonly gear?: SteeringGear | undefined;
  /** With the change in its load line. */
  readonly hub?: RatedHub | undefined;
}

/**
 * Brings a document to SI units and makes its change.
 *
 * @param document with every number finite, as `readCornerDocument` gives it
 * @returns the faults of what does not fit together: pivots that coincide or stand level, a wheel far from
 * its axis, a tie rod that cannot steer, a shaft that points inboard, a contact angle without load factors,
 * shares that do not add up to 1, a duty without load, a change that the corner cannot take
 */
export function setUp(document: CornerDocument): Outcome<CornerSetup> {
  const { side, wheel, rotation_deg = 0, steering } = document;
  const change = changeOf(document.change);
  const rollingBefore = inMetres(wheel.rollingRadius_mm ?? wheel.loadedRadius_mm);
  const before = cornerOf(document);
  const loads = loadCasesOf(document.forces, side);
  const hub = ratedHubOf(document.hub, wheelShift(change));
  const ofChange = before.ok ? faultsOfChange(before.value, rollingBefore, change) : [];
  if (!before.ok || !loads.ok || !hub.ok || ofChange.length > 0)
    return failure(...faultsOf(before), ...faultsOf(loads), ...faultsOf(hub), ...ofChange);
  const corner = changed(before.value, change);
  return success({
    before: before.value,
    corner,
    change,
    radii: {
      loadedRadius: corner.loadedRadius,
      rollingRadius: rollingBefore + change.loadedRadius,
    },
    rotation: radians(rotation_deg),
    loads: loads.value,
    gear: steering && gearOf(steering),
    hub: hub.value,
  });
}
