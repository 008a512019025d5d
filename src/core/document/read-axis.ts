import type { AnglesDocument, PivotsDocument } from './corner-document.ts';
import { refuse, type Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { isRecord, readMembers } from './read-members.ts';
import { readNumber, readTriple } from './read-number.ts';

const PIVOT_KEYS = ['lower_mm', 'upper_mm'] as const;

const ANGLE_KEYS = ['inclination_deg', 'caster_deg', 'scrubRadius_mm', 'trail_mm'] as const;

/**
 * Reads a steering axis, given by its pivots or by a workshop's four measures.
 *
 * The keys that are there decide which of the two is meant: as soon as one key of the pivots is there,
 * those of the measures are unknown.
 */
export function readAxis(place: Place): PivotsDocument | AnglesDocument {
  if (!isRecord(place.value)) {
    const either = `${PIVOT_KEYS.join(' and ')}, or ${ANGLE_KEYS.join(', ')}`;
    refuse(place, `an object with the keys ${either}`);
    return readPivots({ ...place, faults: [] });
  }
  const keys = Object.keys(place.value);
  const byAngles = ANGLE_KEYS.some((key) => keys.includes(key));
  const byPivots = PIVOT_KEYS.some((key) => keys.includes(key));
  return byAngles && !byPivots ? readAngles(place) : readPivots(place);
}

function readPivots(place: Place): PivotsDocument {
  const members = readMembers(place, PIVOT_KEYS);
  return {
    lower_mm: readTriple(members.lower_mm, RANGES.coordinate),
    upper_mm: readTriple(members.upper_mm, RANGES.coordinate),
  };
}

function readAngles(place: Place): AnglesDocument {
  const members = readMembers(place, ANGLE_KEYS);
  return {
    inclination_deg: readNumber(members.inclination_deg, RANGES.axisLean),
    caster_deg: readNumber(members.caster_deg, RANGES.axisLean),
    scrubRadius_mm: readNumber(members.scrubRadius_mm, RANGES.offset),
    trail_mm: readNumber(members.trail_mm, RANGES.offset),
  };
}
