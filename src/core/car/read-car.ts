import { radians } from '../angle.ts';
import type { CornerDocument } from '../document/corner-document.ts';
import { note, refuse, type Place } from '../document/place.ts';
import { readChoice } from '../document/read-choice.ts';
import { readCornerDocument } from '../document/read-corner-document.ts';
import { readList } from '../document/read-list.ts';
import { ifPresent, readMembers } from '../document/read-members.ts';
import { readNumber } from '../document/read-number.ts';
import { setUp } from '../document/set-up.ts';
import { failure, success, type Fault, type Outcome } from '../fault.ts';
import type { Fixing } from '../fastening/fixing.ts';
import type { Side } from '../corner.ts';
import { outerDiameter, rimDiameter, sectionWidth } from '../tyre/dimensions.ts';
import { parseTyre } from '../tyre/parse-tyre.ts';
import type { Tyre } from '../tyre/tyre.ts';
import { fromSI } from '../units/convert.ts';
import type { Anatomy } from './anatomy.ts';
import type { Car, CornerModel } from './car.ts';
import { readAlignment } from './read-alignment.ts';
import { readFixing } from './read-fixing.ts';

const KEYS = [
  'version',
  'id',
  'name',
  'summary',
  'drive',
  'suspension',
  'tyre',
  'rimWidth_in',
  'inset_mm',
  'track_mm',
  'frontAxleLoad_N',
  'pitchDiameter_mm',
  'fixing',
  'assumed',
  'alignment',
  'left',
  'right',
] as const;

/** The only version there has been. */
const VERSION = 1;

/**
 * Reads a training car's file from parsed JSON, strictly, with both its corner documents.
 *
 * @returns the car ready to be computed with and drawn; or every fault found, with the path of its key
 */
export function readCar(value: unknown): Outcome<Car> {
  const faults: Fault[] = [];
  const members = readMembers({ value, path: '', faults }, KEYS);
  if (members.version.value !== VERSION) refuse(members.version, String(VERSION));
  const suspension = readChoice(members.suspension, ['strut', 'double-arm']);
  const tyre = readTyre(members.tyre);
  const rimWidth = 25.4 * readNumber(members.rimWidth_in, { least: 3, most: 16, unit: '' });
  const inset = readNumber(members.inset_mm, { least: -150, most: 150, unit: 'mm' });
  readNumber(members.track_mm, { least: 800, most: 2500, unit: 'mm' });
  readNumber(members.frontAxleLoad_N, { least: 1000, most: 100_000, unit: 'N' });
  const pitchDiameter = readNumber(members.pitchDiameter_mm, { least: 20, most: 200, unit: 'mm' });
  const fixing = readFixing(members.fixing);
  const fitted = tyre && { suspension, tyre, rimWidth, inset, pitchDiameter, fixing };
  const model = (side: Side): CornerModel | undefined => readCorner(members[side], side, fitted);
  const [left, right] = [model('left'), model('right')];
  const car = {
    id: readText(members.id),
    name: readText(members.name),
    summary: readText(members.summary),
    drive: readChoice(members.drive, ['front', 'rear', 'four']),
    suspension,
    tyre: readText(members.tyre),
    assumed: readList(members.assumed, readText, 1),
    alignment: ifPresent(members.alignment, readAlignment),
  };
  if (faults.length > 0 || !left || !right) return failure(...faults);
  return success({ ...car, left, right });
}

interface Fitted {
  readonly suspension: Anatomy['suspension'];
  readonly tyre: Tyre;
  readonly rimWidth: number;
  readonly inset: number;
  readonly pitchDiameter: number;
  readonly fixing: Fixing;
}

function readCorner(place: Place, side: Side, fitted: Fitted | undefined): CornerModel | undefined {
  const read = readCornerDocument(place.value);
  const setup = read.ok ? setUp(read.value) : read;
  if (!read.ok || !setup.ok) {
    for (const fault of setup.ok ? [] : setup.faults) {
      place.faults.push({ ...fault, path: [place.path, fault.path].filter(Boolean).join('.') });
    }
    return undefined;
  }
  const { before: corner, gear, hub: bearing, radii } = setup.value;
  if (corner.side !== side) note(place, `is a ${corner.side} corner`, `a ${side} one`);
  if (!corner.pivots) note(place, 'has its axis by angles', 'both pivots, which are drawn');
  if (!read.value.hub) note(place, 'has no hub', 'a hub, which is drawn');
  if (!gear) note(place, 'has no steering', 'a tie rod, which is drawn');
  if (!corner.pivots || !read.value.hub || !bearing || !gear || !fitted) return undefined;
  return {
    corner: { ...corner, pivots: corner.pivots },
    anatomy: anatomyOf(read.value.hub, fitted),
    gear,
    bearing,
    rollingRadius: radii.rollingRadius,
    fixing: fitted.fixing,
  };
}

function anatomyOf(
  hub: NonNullable<CornerDocument['hub']>,
  { suspension, tyre, rimWidth, inset, pitchDiameter }: Fitted,
): Anatomy {
  return {
    suspension,
    tyreWidth: fromSI(sectionWidth(tyre), 'mm'),
    tyreRadius: fromSI(outerDiameter(tyre) / 2, 'mm'),
    rimRadius: fromSI(rimDiameter(tyre) / 2, 'mm'),
    rimWidth,
    inset,
    loadLineOffset: hub.loadLineOffset_mm,
    spread: hub.spread_mm,
    contactAngle: radians(hub.outboard.contactAngle_deg),
    pitchDiameter,
  };
}

function readTyre(place: Place): Tyre | undefined {
  const tyre = parseTyre(readText(place), place.path);
  if (tyre.ok) return tyre.value;
  place.faults.push(...tyre.faults);
  return undefined;
}

function readText(place: Place): string {
  if (typeof place.value === 'string' && place.value.trim() !== '') return place.value;
  refuse(place, 'some text');
  return '';
}
