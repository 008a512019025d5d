import { note, refuse, type Place } from '#core/document/place.ts';
import { readList } from '#core/document/read-list.ts';
import { ifPresent, isRecord, readMembers } from '#core/document/read-members.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import { readSettings, type Settings } from '../practice/settings.ts';
import { readWhole } from '../sheet/read-whole.ts';
import { inOrder, type Attempt, type Sureness } from './attempt.ts';

export const RECORD_FORMAT = 'knucklebook record';
export const RECORD_VERSION = 1;

/** A practice record as a document of its own, to be carried to another browser. */
export interface RecordFile {
  readonly format: typeof RECORD_FORMAT;
  readonly version: typeof RECORD_VERSION;
  readonly attempts: readonly Attempt[];
  /** The farthest step that has been read of each lesson, by the lesson's address. */
  readonly read: Readonly<Record<string, number>>;
  /** How the learner practises. */
  readonly settings?: Settings;
}

const KEYS = ['format', 'version', 'attempts', 'read', 'settings'] as const;
const ATTEMPT_KEYS = [
  'kind',
  'version',
  'seed',
  'at',
  'help',
  'firstTry',
  'hints',
  'sure',
  'earned',
  'possible',
] as const;

/** Bounds of whole numbers, both included. The times are those from 2020 to 2200. */
const BOUNDS = {
  version: { least: 1, most: 999 },
  at: { least: 1_577_836_800_000, most: 7_258_118_400_000 },
  parts: { least: 0, most: 99 },
  sure: { least: 1, most: 3 },
  step: { least: 1, most: 99 },
} as const;

const MOST_POINTS = 1000;
const NAME = /^[a-z0-9-]{1,60}$/;

/** The text of a record's file: one attempt a line, so that two of them can be compared. */
export function writeRecordFile(
  attempts: readonly Attempt[],
  read: Readonly<Record<string, number>>,
  settings?: Settings,
): string {
  const rows = inOrder(attempts).map((attempt) => `    ${JSON.stringify(inMembers(attempt))}`);
  const list = rows.length === 0 ? '[]' : `[\n${rows.join(',\n')}\n  ]`;
  return `{
  "format": ${JSON.stringify(RECORD_FORMAT)},
  "version": ${RECORD_VERSION},
  "attempts": ${list},
  "read": ${JSON.stringify(read)}${settings ? `,\n  "settings": ${JSON.stringify(settings)}` : ''}
}
`;
}

/**
 * Reads a record's file, or finds everything that is wrong with it. Kinds and lessons that this copy of the course
 * does not have are let through: another copy may, and what is not known is not asked.
 */
export function readRecordFile(text: string): Outcome<RecordFile> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return failure({
      path: '',
      wrong: 'is no JSON',
      allowed: 'a file that was saved on the practice page',
    });
  }
  const faults: Fault[] = [];
  const members = readMembers({ value, path: '', faults }, KEYS);
  if (faults.some(({ path }) => path === '')) return failure(...faults);
  readOnly(members.format, RECORD_FORMAT);
  readOnly(members.version, RECORD_VERSION);
  // What is another document altogether need not be told so at each of its places.
  if (faults.some(({ path }) => path === 'format' || path === 'version')) return failure(...faults);
  const settings = ifPresent(members.settings, readSettings);
  const file: RecordFile = {
    format: RECORD_FORMAT,
    version: RECORD_VERSION,
    attempts: readList(members.attempts, readAttempt),
    read: readSteps(members.read),
    ...(settings && { settings }),
  };
  return faults.length > 0 ? failure(...faults) : success(file);
}

function readAttempt(place: Place): Attempt {
  const members = readMembers(place, ATTEMPT_KEYS);
  return withoutAbsent({
    kind: readName(members.kind),
    version: readWhole(members.version, BOUNDS.version),
    seed: readName(members.seed),
    at: readWhole(members.at, BOUNDS.at),
    help: readWhole(members.help, BOUNDS.parts),
    firstTry: readYesNo(members.firstTry),
    hints: ifPresent(members.hints, (at) => readWhole(at, BOUNDS.parts)),
    sure: ifPresent(members.sure, (at) => readWhole(at, BOUNDS.sure) as Sureness),
    earned: readPoints(members.earned),
    possible: readPoints(members.possible),
  });
}

function readName(place: Place): string {
  const { value } = place;
  if (typeof value === 'string' && NAME.test(value)) return value;
  refuse(place, 'up to 60 small letters, digits and dashes');
  return '';
}

function readYesNo(place: Place): boolean {
  if (typeof place.value === 'boolean') return place.value;
  refuse(place, 'true or false');
  return false;
}

function readPoints(place: Place): number {
  const { value } = place;
  if (typeof value === 'number' && value >= 0 && value <= MOST_POINTS) return value;
  if (typeof value === 'number') note(place, `is ${value}`, `a number from 0 to ${MOST_POINTS}`);
  else refuse(place, `a number from 0 to ${MOST_POINTS}`);
  return 0;
}

function readSteps(place: Place): Readonly<Record<string, number>> {
  const { value, path, faults } = place;
  if (!isRecord(value)) {
    refuse(place, 'an object with the addresses of lessons as keys');
    return {};
  }
  return Object.fromEntries(
    Object.entries(value).map(([lesson, step]) => {
      const at = { value: step, path: `${path}[${JSON.stringify(lesson)}]`, faults };
      if (!NAME.test(lesson)) note(at, 'is no lesson', 'the address of a lesson');
      return [lesson, readWhole(at, BOUNDS.step)];
    }),
  );
}

function readOnly(place: Place, only: string | number): void {
  if (place.value !== only) refuse(place, JSON.stringify(only));
}

/** The known members in their order, whatever else a browser has kept with them. */
const inMembers = (attempt: Attempt): object =>
  Object.fromEntries(
    ATTEMPT_KEYS.flatMap((key) => (attempt[key] === undefined ? [] : [[key, attempt[key]]])),
  );
