import { note, refuse, type Place } from '#core/document/place.ts';
import { readChoice } from '#core/document/read-choice.ts';
import { readList } from '#core/document/read-list.ts';
import { ifPresent, readMembers } from '#core/document/read-members.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import type { Typed } from '../read-entry.ts';
import { readOnly } from './read-sheet.ts';
import { readWhole } from './read-whole.ts';
import { readWords } from '#core/document/read-words.ts';
import {
  RESULT_FORMAT,
  RESULT_LIMITS,
  RESULT_VERSION,
  type ItemWork,
  type SealedResult,
} from './result.ts';
import { SHEET_LIMITS } from './sheet.ts';

const KEYS = ['format', 'version', 'sheet', 'number', 'handedIn_min', 'items', 'check'] as const;

/** Reads a result that was handed in as a document. Whether it fits its checksum and a sheet is asked elsewhere. */
export function readResult(value: unknown): Outcome<SealedResult> {
  const faults: Fault[] = [];
  const members = readMembers({ value, path: '', faults }, KEYS);
  if (faults.some(({ path }) => path === '')) return failure(...faults);
  const result = withoutAbsent({
    format: readOnly(members.format, RESULT_FORMAT),
    version: readOnly(members.version, RESULT_VERSION),
    sheet: readSigns(members.sheet),
    number: readWhole(members.number, SHEET_LIMITS.number),
    handedIn_min: ifPresent(members.handedIn_min, (at) =>
      readWhole(at, RESULT_LIMITS.handedIn_min),
    ),
    items: readList(members.items, readWork),
    check: readSigns(members.check),
  });
  return faults.length > 0 ? failure(...faults) : success(result);
}

function readWork(place: Place): ItemWork {
  const members = readMembers(place, ['attempts', 'hints']);
  return {
    attempts: readList(members.attempts, (attempt) => readList(attempt, readTyped)),
    hints: ifPresent(members.hints, (hints) => readList(hints, readPart)) ?? [],
  };
}

function readTyped(place: Place): Typed {
  const members = readMembers(place, ['text', 'word']);
  return withoutAbsent({
    text: readWords(members.text, { least: 0, most: RESULT_LIMITS.entryLetters }),
    word: ifPresent(members.word, (at) =>
      readChoice<'positive' | 'negative'>(at, ['positive', 'negative']),
    ),
  });
}

const readPart = (place: Place): number =>
  readWhole(place, { least: 0, most: RESULT_LIMITS.parts - 1 });

function readSigns(place: Place): string {
  const { value } = place;
  if (typeof value !== 'string') refuse(place, 'a text');
  else if (!/^[0-9a-z]{1,20}$/.test(value))
    note(place, 'holds other signs', 'digits and small letters');
  else return value;
  return '';
}
