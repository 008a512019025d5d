import { radians } from '../angle.ts';
import { spinAxis, type Corner } from '../corner.ts';
import { failure, success, type Outcome } from '../fault.ts';
import type { CornerDocument } from './corner-document.ts';
import { inMetres, pointOf } from './edge-units.ts';
import { axisOf } from './set-up-axis.ts';
import { faultsOfReach } from './set-up-reach.ts';
import { faultsOfTieRod, tieRodOf } from './set-up-steering.ts';

/** The corner of a document, straight ahead and without its change. */
export function cornerOf({ side, axis, wheel, steering }: CornerDocument): Outcome<Corner> {
  const rest = {
    side,
    wheelCentre: pointOf(wheel.centre_mm),
    spin: spinAxis(side, radians(wheel.camber_deg ?? 0), radians(wheel.toe_deg ?? 0)),
    loadedRadius: inMetres(wheel.loadedRadius_mm),
    tieRod: steering && tieRodOf(steering),
  };
  const line = axisOf(axis, rest);
  if (!line.ok) return line;
  const corner = { ...rest, ...line.value };
  const faults = [
    ...faultsOfReach('wheel.centre_mm', corner.wheelCentre, corner.axis),
    ...faultsOfTieRod(corner),
  ];
  return faults.length === 0 ? success(corner) : failure(...faults);
}
