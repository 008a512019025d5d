import type { SteeringDocument } from './corner-document.ts';
import type { Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { ifPresent, readMembers } from './read-members.ts';
import { readNumber, readTriple } from './read-number.ts';
import { withoutAbsent } from './without-absent.ts';

const KEYS = ['outer_mm', 'inner_mm', 'travelPerTurn_mm', 'rimDiameter_mm', 'assist'] as const;

/** Reads the tie rod and the steering gear. */
export function readSteering(place: Place): SteeringDocument {
  const members = readMembers(place, KEYS);
  return withoutAbsent({
    outer_mm: readTriple(members.outer_mm, RANGES.coordinate),
    inner_mm: readTriple(members.inner_mm, RANGES.coordinate),
    travelPerTurn_mm: readNumber(members.travelPerTurn_mm, RANGES.travelPerTurn),
    rimDiameter_mm: readNumber(members.rimDiameter_mm, RANGES.rimDiameter),
    assist: ifPresent(members.assist, (at) => readNumber(at, RANGES.assist)),
  });
}
