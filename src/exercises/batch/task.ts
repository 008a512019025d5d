import { note, refuse, type Place } from '#core/document/place.ts';
import { readList } from '#core/document/read-list.ts';
import { ifPresent, isRecord, readMembers, type Members } from '#core/document/read-members.ts';
import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import { isKindId, loadKind, type ExerciseKind } from '../registry.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { readWhole } from '../sheet/read-whole.ts';
import { readWords } from '#core/document/read-words.ts';
import { SHEET_LIMITS, type Sheet } from '../sheet/sheet.ts';
import { sheetKinds } from '../sheet/sheet-kinds.ts';

/** Something to be drawn, answered or graded: an exercise by itself, or a sheet. */
export type Task =
  | {
      readonly of: 'exercise';
      readonly kind: ExerciseKind;
      readonly seed: string;
      readonly entries: Place;
    }
  | {
      readonly of: 'sheet';
      readonly sheet: Sheet;
      readonly kinds: readonly ExerciseKind[];
      readonly numbers: readonly number[];
      readonly results: Place;
    };

/** What a command wants of a task besides kind and seed, or besides the sheet. */
export type Wanted = 'nothing' | 'work';

const EXERCISE_KEYS = ['kind', 'version', 'seed'] as const;

/** Reads a task. Its `entries` or `results` are read by whoever grades them. */
export function readTask(value: unknown, wanted: Wanted): Promise<Outcome<Task>> {
  const isSheet = isRecord(value) && Object.hasOwn(value, 'sheet');
  return isSheet ? readSheetTask(value, wanted) : readExerciseTask(value, wanted);
}

async function readExerciseTask(value: unknown, wanted: Wanted): Promise<Outcome<Task>> {
  const faults: Fault[] = [];
  const keys = wanted === 'work' ? ([...EXERCISE_KEYS, 'entries'] as const) : EXERCISE_KEYS;
  const members: Members<(typeof keys)[number]> = readMembers({ value, path: '', faults }, keys);
  if (faults.some(({ path }) => path === '')) return failure(...faults);
  const seed = readWords(members.seed, { least: 1, most: 80 });
  const version = ifPresent(members.version, (at) => readWhole(at, SHEET_LIMITS.version));
  const kind = await readKind(members.kind, members.version, version);
  const entries = 'entries' in members ? members.entries : NOWHERE;
  return kind === undefined || faults.length > 0
    ? failure(...faults)
    : success({ of: 'exercise', kind, seed, entries: { ...entries, faults: [] } });
}

async function readKind(
  place: Place,
  versionPlace: Place,
  version: number | undefined,
): Promise<ExerciseKind | undefined> {
  const { value: id } = place;
  if (typeof id !== 'string' || !isKindId(id)) {
    refuse(place, 'the id of an exercise kind, such as "spacer-scrub"');
    return undefined;
  }
  const kind = await loadKind(id);
  if (version !== undefined && version !== kind.version)
    note(versionPlace, `is ${version}, which is not there`, `${kind.version} for ${id}`);
  return kind;
}

async function readSheetTask(value: unknown, wanted: Wanted): Promise<Outcome<Task>> {
  const faults: Fault[] = [];
  const keys = ['sheet', wanted === 'work' ? 'results' : 'numbers'] as const;
  const members = readMembers({ value, path: '', faults }, keys);
  const sheet = readSheet(members.sheet.value);
  const kinds = sheet.ok ? await sheetKinds(sheet.value) : failure();
  for (const fault of [...(sheet.ok ? [] : sheet.faults), ...(kinds.ok ? [] : kinds.faults)])
    faults.push({ ...fault, path: fault.path === '' ? 'sheet' : `sheet.${fault.path}` });
  const work = members[keys[1]];
  const numbers =
    wanted === 'work' ? [] : readList(work, (at) => readWhole(at, SHEET_LIMITS.number), 1);
  return !sheet.ok || !kinds.ok || faults.length > 0
    ? failure(...faults)
    : success({
        of: 'sheet',
        sheet: sheet.value,
        kinds: kinds.value,
        numbers,
        results: { ...work, faults: [] },
      });
}

const NOWHERE: Place = { value: undefined, path: '', faults: [] };
