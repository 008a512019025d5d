import { note, type Place } from '../document/place.ts';
import { RANGES } from '../document/ranges.ts';
import { ifPresent, isRecord, readMembers } from '../document/read-members.ts';
import { readNumber, type Range } from '../document/read-number.ts';
import { readWords } from '../document/read-words.ts';
import { withoutAbsent } from '../document/without-absent.ts';
import type { VariantDocument, WheelChangeDocument } from './bench-document.ts';
import { readTyreText } from './read-tyre-text.ts';

const CHANGE_KEYS = [
  'spacer_mm',
  'inset_mm',
  'rimWidth_in',
  'wheelThickness_mm',
  'tyre',
  'camberAtUpperPivot_deg',
  'camberAtCarrier_deg',
] as const;

/** What a change may be, both ends included. */
export const CHANGE_RANGES = {
  spacer_mm: { least: 0, most: 100, unit: 'mm' },
  inset_mm: { least: -150, most: 150, unit: 'mm' },
  rimWidth_in: { least: 3, most: 16, unit: '' },
  wheelThickness_mm: { least: 3, most: 100, unit: 'mm' },
  camberAtUpperPivot_deg: RANGES.camberChange,
  camberAtCarrier_deg: RANGES.camberChange,
} as const satisfies Record<string, Range>;

const NAME_LETTERS = 60;

/** Reads a variant: a change for both wheels, or one for each. The keys that are there decide which is meant. */
export function readVariant(place: Place): VariantDocument {
  const sided = isRecord(place.value) && ('left' in place.value || 'right' in place.value);
  if (sided) {
    const members = readMembers(place, ['name', 'left', 'right']);
    return {
      name: readName(members.name),
      left: readChange(members.left),
      right: readChange(members.right),
    };
  }
  const members = readMembers(place, ['name', 'both']);
  return { name: readName(members.name), both: readChange(members.both) };
}

const readName = (place: Place): string => readWords(place, { least: 1, most: NAME_LETTERS });

function readChange(place: Place): WheelChangeDocument {
  const members = readMembers(place, CHANGE_KEYS);
  const number = (key: keyof typeof CHANGE_RANGES): number | undefined =>
    ifPresent(members[key], (at) => readNumber(at, CHANGE_RANGES[key]));
  const change = withoutAbsent({
    spacer_mm: number('spacer_mm'),
    inset_mm: number('inset_mm'),
    rimWidth_in: number('rimWidth_in'),
    wheelThickness_mm: number('wheelThickness_mm'),
    tyre: ifPresent(members.tyre, readTyreText),
    camberAtUpperPivot_deg: number('camberAtUpperPivot_deg'),
    camberAtCarrier_deg: number('camberAtCarrier_deg'),
  });
  if (change.rimWidth_in !== undefined && change.inset_mm === undefined)
    note(
      { ...place, path: `${place.path}.inset_mm` },
      'is missing beside a rim of another width',
      'the inset of the new wheel, as cast into it',
    );
  return change;
}
