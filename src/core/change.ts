import { outboardSign, type Corner } from './corner.ts';
import type { Fault } from './fault.ts';
import { lineThrough } from './line.ts';
import { rotation, turned, turnedAbout } from './rotation.ts';
import { along, FORWARD } from './vector.ts';

/** A change to a corner: differences from the car as it stands, in metres and radians. */
export interface Change {
  /** Thickness of a spacer between hub and wheel. */
  readonly spacer: number;
  /** New inset less old: a wheel of more inset sits farther inboard. */
  readonly inset: number;
  /** By how much another tyre or pressure lets the wheel centre stand higher. */
  readonly loadedRadius: number;
  /** Camber gained at a top plate or an upper arm: carrier and upper pivot turn about the lower pivot. */
  readonly camberAtUpperPivot: number;
  /** Camber gained at the knuckle or a slotted strut bolt: the carrier turns, both pivots stay. */
  readonly camberAtCarrier: number;
}

export const NO_CHANGE: Change = {
  spacer: 0,
  inset: 0,
  loadedRadius: 0,
  camberAtUpperPivot: 0,
  camberAtCarrier: 0,
};

/** How far a change moves the wheel out along the spin axis, in metres. The bearing's load line goes with it. */
export const wheelShift = ({ spacer, inset }: Pick<Change, 'spacer' | 'inset'>): number =>
  spacer - inset;

/**
 * The corner after a change: camber first, then spacer and inset along the new spin axis, then the radius.
 *
 * A camber change turns carrier (C, s, tie rod's outer end) about the line through the lower pivot parallel to X;
 * at the upper pivot the axis turns along, at the carrier it stays. The rod's inner end stays too: the rod
 * is taken to be set to its new length, as it is when toe is set after camber.
 *
 * @throws RangeError where `changeFaults` finds something; forms and documents ask it before
 */
export function changed(corner: Corner, change: Change): Corner {
  const [fault] = changeFaults(corner, change);
  if (fault !== undefined)
    throw new RangeError(`${fault.path} ${fault.wrong}, not ${fault.allowed}`);
  const withCamber = cambered(corner, change);
  return {
    ...withCamber,
    wheelCentre: along(withCamber.wheelCentre, wheelShift(change), withCamber.spin),
    loadedRadius: corner.loadedRadius + change.loadedRadius,
  };
}

/** Why a corner cannot be changed so: one fault for each wrong member of the change, with its name as path. */
export function changeFaults(corner: Corner, change: Change): readonly Fault[] {
  const faults: Fault[] = [];
  if (!(corner.loadedRadius + change.loadedRadius > 0))
    faults.push({
      path: 'loadedRadius',
      wrong: 'takes away the whole loaded radius',
      allowed: 'a change that leaves the radius above 0',
    });
  if (corner.pivots !== undefined) return faults;
  for (const path of ['camberAtUpperPivot', 'camberAtCarrier'] as const)
    if (change[path] !== 0)
      faults.push({
        path,
        wrong: 'turns the corner about its lower pivot, but its axis is given by angles alone',
        allowed: '0, or an axis given by its two pivots',
      });
  return faults;
}

function cambered(corner: Corner, { camberAtUpperPivot, camberAtCarrier }: Change): Corner {
  const { pivots, tieRod, side } = corner;
  if (pivots === undefined || (camberAtUpperPivot === 0 && camberAtCarrier === 0)) return corner;
  // Right-handed about X, a left wheel's top goes inboard: hence the sign.
  const leaning = (camber: number) => rotation(FORWARD, -outboardSign(side) * camber);
  const byAll = leaning(camberAtUpperPivot + camberAtCarrier);
  const { lower } = pivots;
  const upper = turnedAbout(pivots.upper, lower, leaning(camberAtUpperPivot));
  return {
    ...corner,
    axis: lineThrough(lower, upper),
    pivots: { lower, upper },
    wheelCentre: turnedAbout(corner.wheelCentre, lower, byAll),
    spin: turned(corner.spin, byAll),
    tieRod: tieRod && { ...tieRod, outer: turnedAbout(tieRod.outer, lower, byAll) },
  };
}
