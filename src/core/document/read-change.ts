import type { ChangeDocument } from './corner-document.ts';
import type { Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { ifPresent, readMembers } from './read-members.ts';
import { readNumber } from './read-number.ts';
import { withoutAbsent } from './without-absent.ts';

const KEYS = [
  'spacer_mm',
  'inset_mm',
  'loadedRadius_mm',
  'camberAtUpperPivot_deg',
  'camberAtCarrier_deg',
] as const;

/** Reads a change to the car; what is left out does not change. */
export function readChange(place: Place): ChangeDocument {
  const members = readMembers(place, KEYS);
  return withoutAbsent({
    spacer_mm: ifPresent(members.spacer_mm, lengthChange),
    inset_mm: ifPresent(members.inset_mm, lengthChange),
    loadedRadius_mm: ifPresent(members.loadedRadius_mm, lengthChange),
    camberAtUpperPivot_deg: ifPresent(members.camberAtUpperPivot_deg, camberChange),
    camberAtCarrier_deg: ifPresent(members.camberAtCarrier_deg, camberChange),
  });
}

const lengthChange = (place: Place): number => readNumber(place, RANGES.lengthChange);

const camberChange = (place: Place): number => readNumber(place, RANGES.camberChange);
