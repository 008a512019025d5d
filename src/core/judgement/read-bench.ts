import { readCornerDocument } from '../document/read-corner-document.ts';
import type { CornerDocument } from '../document/corner-document.ts';
import { note, type Place } from '../document/place.ts';
import { readChoice } from '../document/read-choice.ts';
import { readList } from '../document/read-list.ts';
import { ifPresent, readMembers } from '../document/read-members.ts';
import { readWords } from '../document/read-words.ts';
import { withoutAbsent } from '../document/without-absent.ts';
import { failure, faultsOf, success, type Fault, type Outcome } from '../fault.ts';
import {
  AXIS_WAYS,
  BENCH_FORMAT,
  BENCH_VERSION,
  DRIVES,
  MOST_VARIANTS,
  ORIGINS,
  SUSPENSIONS,
  type BenchCarDocument,
  type BenchDocument,
  type FixingDocument,
} from './bench-document.ts';
import { faultsAt, setUpBench } from './bench-setup.ts';
import { migrated } from './migrate-bench.ts';
import { readTyreText } from './read-tyre-text.ts';
import { readValues } from './read-values.ts';
import { readVariant } from './read-variant.ts';
import { readFixing } from '../car/read-fixing.ts';

const KEYS = ['format', 'version', 'car', 'variants'] as const;

const CAR_KEYS = [
  'name',
  'origin',
  'suspension',
  'drive',
  'tyre',
  'corner',
  'axisFrom',
  'values',
  'fixing',
] as const;

const NAME_LETTERS = 80;

/**
 * Reads a bench document from parsed JSON, strictly: an older version is brought up to date first, then unknown keys, wrong
 * types and numbers outside their range are found in one pass, and where there are none, what does not fit
 * together (`setUpBench`).
 *
 * @param value anything
 * @returns a document that `setUpBench` takes without a fault; or every fault found, with the path of its key
 */
export function readBench(value: unknown): Outcome<BenchDocument> {
  const read = readBenchParts(value);
  if (!read.ok) return read;
  const setup = setUpBench(read.value);
  return setup.ok ? read : setup;
}

/**
 * Reads a bench document as `readBench` does, but does not ask whether its numbers fit together: what a page keeps of work
 * in progress may be a car whose upper pivot stands below its lower one still.
 */
export function readBenchParts(value: unknown): Outcome<BenchDocument> {
  const current = migrated(value);
  if (!current.ok) return current;
  const faults: Fault[] = [];
  const document = readParts({ value: current.value, path: '', faults });
  return faults.length === 0 ? success(document) : failure(...faults);
}

function readParts(place: Place): BenchDocument {
  const members = readMembers(place, KEYS);
  const variants = readList(members.variants, readVariant);
  if (variants.length > MOST_VARIANTS)
    note(members.variants, `has ${variants.length} members`, `up to ${MOST_VARIANTS}`);
  return {
    format: readChoice(members.format, [BENCH_FORMAT]),
    version: BENCH_VERSION,
    car: readBenchCar(members.car),
    variants,
  };
}

function readBenchCar(place: Place): BenchCarDocument {
  const members = readMembers(place, CAR_KEYS);
  return withoutAbsent({
    name: readWords(members.name, { least: 1, most: NAME_LETTERS }),
    origin: readChoice(members.origin, ORIGINS),
    suspension: readChoice(members.suspension, SUSPENSIONS),
    drive: readChoice(members.drive, DRIVES),
    tyre: readTyreText(members.tyre),
    corner: readCorner(members.corner),
    axisFrom: readChoice(members.axisFrom, AXIS_WAYS),
    values: readValues(members.values),
    fixing: ifPresent(members.fixing, (at) => {
      readFixing(at);
      return at.value as FixingDocument;
    }),
  });
}

/** A corner document; what the bench has a place of its own for must not stand in it a second time. */
function readCorner(place: Place): CornerDocument {
  const read = readCornerDocument(place.value);
  place.faults.push(...faultsAt(place.path, faultsOf(read)));
  if (!read.ok) return place.value as CornerDocument;
  for (const key of ['rotation_deg', 'forces', 'change'] as const)
    if (read.value[key] !== undefined)
      note(
        { ...place, path: `${place.path}.${key}` },
        'is there, but the bench has loads and changes of its own',
        'a corner as it stands, straight ahead',
      );
  return read.value;
}
