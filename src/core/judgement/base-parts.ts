import { contactCentre, type Corner, type Pivots, type TieRod } from '../corner.ts';
import type { CornerSetup } from '../document/set-up.ts';
import { ratedHubOf, type RatedHub } from '../document/set-up-hub.ts';
import { gearOf, tieRodOf } from '../document/set-up-steering.ts';
import type { SteeringGear } from '../handwheel.ts';
import { atHeight } from '../line.ts';
import { mirroredCorner } from '../mirror.ts';
import { toSI } from '../units/convert.ts';
import type { Vector } from '../vector.ts';
import { tripleInMillimetres } from '../document/edge-units.ts';
import type { BenchCarDocument } from './bench-document.ts';
import { LOWER_BELOW_mm, TYPICAL_HUB, typicalSteering, UPPER_ABOVE_mm } from './typical-car.ts';

/** The left corner that inputs fall back on, with what it did not have filled in by what is typical. */
export interface BaseParts {
  readonly corner: Corner;
  readonly pivots: Pivots;
  readonly tieRod: TieRod;
  readonly gear: SteeringGear;
  readonly hub: RatedHub;
  /** Where the contact centre is, which readings count from. */
  readonly contact: Vector;
  /** Which parts the corner’s document did not have. */
  readonly missing: ReadonlySet<'pivots' | 'steering' | 'hub'>;
}

/** The parts of a car’s corner, set up before, as a left one. */
export function baseParts(car: BenchCarDocument, { before, gear, hub }: CornerSetup): BaseParts {
  const corner = before.side === 'left' ? before : mirroredCorner(before);
  const contact = contactCentre(corner);
  const pivots = corner.pivots ?? pivotsOn(car, corner, contact);
  const steering = typicalSteering(car.suspension, tripleInMillimetres(pivots.lower));
  const missing = new Set<'pivots' | 'steering' | 'hub'>();
  if (corner.pivots === undefined) missing.add('pivots');
  if (corner.tieRod === undefined || gear === undefined) missing.add('steering');
  if (hub === undefined) missing.add('hub');
  return {
    corner,
    pivots,
    tieRod: corner.tieRod ?? tieRodOf(steering),
    gear: gear ?? gearOf(steering),
    hub: hub ?? typicalHub(),
    contact,
    missing,
  };
}

/** Points of an axis that is given by angles, at the heights where pivots usually are, or where they have been measured. */
function pivotsOn(
  { values, suspension }: BenchCarDocument,
  corner: Corner,
  contact: Vector,
): Pivots {
  const { axis, wheelCentre } = corner;
  const measuredUp = values.lowerUp_mm?.value;
  return {
    lower: atHeight(
      axis,
      measuredUp === undefined
        ? wheelCentre.z - toSI(LOWER_BELOW_mm, 'mm')
        : contact.z + toSI(measuredUp, 'mm'),
    ),
    upper: atHeight(axis, wheelCentre.z + toSI(UPPER_ABOVE_mm[suspension], 'mm')),
  };
}

function typicalHub(): RatedHub {
  const hub = ratedHubOf(TYPICAL_HUB, 0);
  if (hub.ok && hub.value !== undefined) return hub.value;
  throw new RangeError('the typical hub is none');
}
