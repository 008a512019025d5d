import { note, refuse, type Place } from '#core/document/place.ts';
import { readChoice } from '#core/document/read-choice.ts';
import { readList } from '#core/document/read-list.ts';
import { ifPresent, readMembers } from '#core/document/read-members.ts';
import { readNumber } from '#core/document/read-number.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import { isKindId } from '../registry.ts';
import { readWhole } from './read-whole.ts';
import { readWords } from '#core/document/read-words.ts';
import {
  ANSWERS_SHOWN,
  SEED_PATTERN,
  SHEET_FORMAT,
  SHEET_LIMITS,
  SHEET_VERSION,
  TOLERANCE_POLICIES,
  type AnswersShown,
  type Sheet,
  type SheetItem,
} from './sheet.ts';

const KEYS = ['format', 'version', 'title', 'note', 'seed', 'answers', 'items'] as const;
const ITEM_KEYS = [
  'kind',
  'version',
  'marks',
  'attempts',
  'hintCost_percent',
  'tolerance',
] as const;

/**
 * Reads a sheet, or finds everything that is wrong with it. Whether its kinds are there in the versions that it
 * names is another question: see `sheetKinds`.
 */
export function readSheet(value: unknown): Outcome<Sheet> {
  const faults: Fault[] = [];
  const members = readMembers({ value, path: '', faults }, KEYS);
  if (faults.some(({ path }) => path === '')) return failure(...faults);
  const answers = readChoice(members.answers, ANSWERS_SHOWN);
  const items = readList(members.items, (place) => readItem(place, answers), 1);
  if (items.length > SHEET_LIMITS.items)
    note(members.items, `has ${items.length} members`, `up to ${SHEET_LIMITS.items}`);
  const sheet: Sheet = {
    format: readOnly(members.format, SHEET_FORMAT),
    version: readOnly(members.version, SHEET_VERSION),
    title: readWords(members.title, { least: 1, most: SHEET_LIMITS.titleLetters }),
    note:
      ifPresent(members.note, (place) =>
        readWords(place, { least: 0, most: SHEET_LIMITS.noteLetters, lines: true }),
      ) ?? '',
    seed: readSeed(members.seed),
    answers,
    items,
  };
  return faults.length > 0 ? failure(...faults) : success(sheet);
}

function readItem(place: Place, answers: AnswersShown): SheetItem {
  const members = readMembers(place, ITEM_KEYS);
  return withoutAbsent({
    kind: readKind(members.kind),
    version: readWhole(members.version, SHEET_LIMITS.version),
    marks: readNumber(members.marks, SHEET_LIMITS.marks),
    attempts: ifPresent(members.attempts, (at) => readAttempts(at, answers)) ?? 1,
    hintCost_percent: ifPresent(members.hintCost_percent, (at) =>
      readNumber(at, SHEET_LIMITS.hintCost_percent),
    ),
    tolerance: ifPresent(members.tolerance, (at) => readChoice(at, TOLERANCE_POLICIES)) ?? 'usual',
  });
}

/** Whoever is told nothing before handing in has nothing to try again for. */
function readAttempts(place: Place, answers: AnswersShown): number {
  const attempts = readWhole(place, SHEET_LIMITS.attempts);
  if (attempts > 1 && answers !== 'each-attempt')
    note(
      place,
      `is ${attempts}, but nothing is told after an attempt`,
      '1, or answers shown after each attempt',
    );
  return attempts;
}

function readKind(place: Place): string {
  const { value } = place;
  if (typeof value === 'string' && isKindId(value)) return value;
  refuse(place, 'the id of an exercise kind, such as "spacer-scrub"');
  return '';
}

function readSeed(place: Place): string {
  const { value } = place;
  if (typeof value === 'string' && SEED_PATTERN.test(value)) return value;
  refuse(place, 'up to 40 small letters, digits and dashes');
  return '';
}

/** Reads what can be one thing only. */
export function readOnly<Value extends string | number>(place: Place, only: Value): Value {
  if (place.value !== only) refuse(place, JSON.stringify(only));
  return only;
}
