import { memberPath, note, type Place } from '../document/place.ts';
import { readChoice } from '../document/read-choice.ts';
import { ifPresent, readMembers } from '../document/read-members.ts';
import { readNumber, type Range } from '../document/read-number.ts';
import { withoutAbsent } from '../document/without-absent.ts';
import { UNITS } from '../units/units.ts';
import type { BenchCarDocument, ValueDocument } from './bench-document.ts';
import { INPUT_IDS, inputAbout, type InputAbout } from './inputs.ts';
import { SOURCE_IDS } from './known-value.ts';

/** Reads what is known of a car: `{ "camber_deg": { "value": -0.5, "plusMinus": 0.3, "source": "measured" }, … }`. */
export function readValues(place: Place): BenchCarDocument['values'] {
  const members = readMembers(place, INPUT_IDS);
  const read = INPUT_IDS.map((id) => [
    id,
    ifPresent(members[id], (at) => readValue(at, inputAbout(id))),
  ]);
  return withoutAbsent(Object.fromEntries(read) as BenchCarDocument['values']);
}

function readValue(place: Place, about: InputAbout): ValueDocument {
  const members = readMembers(place, ['value', 'plusMinus', 'source']);
  const range = rangeOf(about);
  const value = readNumber(members.value, range);
  const plusMinus = readNumber(members.plusMinus, {
    ...range,
    least: 0,
    most: (range.most - range.least) / 2,
  });
  if (range.least >= 0 && value > 0 && plusMinus >= value)
    note(
      { ...place, path: memberPath(place.path, 'plusMinus') },
      `is ${plusMinus}, which reaches down to nought`,
      `less than the value, ${value}`,
    );
  return { value, plusMinus, source: readChoice(members.source, SOURCE_IDS) };
}

/** Units that messages and hints about a thousandfold know by name; others are in the key. */
function rangeOf({ least, most, unit }: InputAbout): Range {
  if (unit === 'mm' || unit === 'N') return { least, most, unit };
  return { least, most, unit: UNITS[unit].symbol === '°' ? 'degrees' : '' };
}
