import type { ForceDocument } from './corner-document.ts';
import { refuse, type Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { readChoice } from './read-choice.ts';
import { ifPresent, isRecord, readMembers } from './read-members.ts';
import { readNumber, readTriple } from './read-number.ts';
import { withoutAbsent } from './without-absent.ts';

const CASES = ['brake-on-carrier', 'shaft', 'impact', 'lateral', 'vertical'] as const;

/** The keys of each case, in the order in which a document has them. */
const KEYS = {
  'brake-on-carrier': ['case', 'force_N'],
  shaft: ['case', 'force_N', 'shaftDirection'],
  impact: ['case', 'vector_N'],
  lateral: ['case', 'force_N', 'pneumaticTrail_mm'],
  vertical: ['case', 'force_N'],
} as const;

/** Where there is no reading it: any force will do, for it never gets out (see place.ts). */
const STAND_IN: ForceDocument = { case: 'vertical', force_N: 0 };

/** Reads one force. Its case decides which other keys there are, so a wrong case hides their faults. */
export function readForce(place: Place): ForceDocument {
  const { value, path, faults } = place;
  if (!isRecord(value)) {
    refuse(place, 'an object with the key case and the numbers of that case');
    return STAND_IN;
  }
  const named = value['case'];
  const kind = readChoice({ value: named, path: `${path}.case`, faults }, CASES);
  return kind === named ? readCase(kind, place) : STAND_IN;
}

function readCase(kind: ForceDocument['case'], place: Place): ForceDocument {
  switch (kind) {
    case 'brake-on-carrier':
    case 'vertical': {
      const members = readMembers(place, KEYS[kind]);
      return { case: kind, force_N: readNumber(members.force_N, RANGES.force) };
    }
    case 'shaft': {
      const members = readMembers(place, KEYS[kind]);
      return withoutAbsent({
        case: kind,
        force_N: readNumber(members.force_N, RANGES.force),
        shaftDirection: ifPresent(members.shaftDirection, (at) => readTriple(at, RANGES.direction)),
      });
    }
    case 'impact': {
      const members = readMembers(place, KEYS[kind]);
      return { case: kind, vector_N: readTriple(members.vector_N, RANGES.force) };
    }
    case 'lateral': {
      const members = readMembers(place, KEYS[kind]);
      return {
        case: kind,
        force_N: readNumber(members.force_N, RANGES.force),
        pneumaticTrail_mm: readNumber(members.pneumaticTrail_mm, RANGES.pneumaticTrail),
      };
    }
  }
}
