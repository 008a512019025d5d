import { radians } from '../angle.ts';
import { note, type Place } from '../document/place.ts';
import { readMembers } from '../document/read-members.ts';
import { readNumber, type Range } from '../document/read-number.ts';
import type { Alignment, Band, PairBand } from './alignment.ts';

const KEYS = [
  'camber_deg',
  'caster_deg',
  'inclination_deg',
  'includedAngle_deg',
  'toe_deg',
] as const;

const ANGLE: Range = { least: -30, most: 30, unit: 'degrees' };
const DIFFERENCE: Range = { least: 0.05, most: 5, unit: 'degrees' };

/** Reads what a car’s wheels are allowed: `{ "camber_deg": { "least": -1.25, "most": 0.25, "difference": 0.5 }, … }`. */
export function readAlignment(place: Place): Alignment {
  const members = readMembers(place, KEYS);
  return {
    camber: readPairBand(members.camber_deg),
    caster: readPairBand(members.caster_deg),
    inclination: readPairBand(members.inclination_deg),
    includedAngle: readPairBand(members.includedAngle_deg),
    toe: readBand(members.toe_deg),
  };
}

function readPairBand(place: Place): PairBand {
  const { least, most, difference } = readMembers(place, ['least', 'most', 'difference']);
  return { ...band(least, most), difference: radians(readNumber(difference, DIFFERENCE)) };
}

function readBand(place: Place): Band {
  const { least, most } = readMembers(place, ['least', 'most']);
  return band(least, most);
}

function band(least: Place, most: Place): Band {
  const [from, to] = [readNumber(least, ANGLE), readNumber(most, ANGLE)];
  if (to <= from) note(most, `is ${to}`, `more than the least, ${from}`);
  return { least: radians(from), most: radians(to) };
}
