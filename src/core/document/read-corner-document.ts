import { failure, success, type Fault, type Outcome } from '../fault.ts';
import type { CornerDocument, WheelDocument } from './corner-document.ts';
import type { Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { readAxis } from './read-axis.ts';
import { readChange } from './read-change.ts';
import { readChoice } from './read-choice.ts';
import { readForce } from './read-force.ts';
import { readHub } from './read-hub.ts';
import { readList } from './read-list.ts';
import { ifPresent, readMembers } from './read-members.ts';
import { readNumber, readTriple } from './read-number.ts';
import { readSteering } from './read-steering.ts';
import { setUp } from './set-up.ts';
import { withoutAbsent } from './without-absent.ts';

const KEYS = [
  'side',
  'axis',
  'wheel',
  'rotation_deg',
  'forces',
  'steering',
  'hub',
  'change',
] as const;

const WHEEL_KEYS = [
  'centre_mm',
  'camber_deg',
  'toe_deg',
  'loadedRadius_mm',
  'rollingRadius_mm',
] as const;

/**
 * Reads a corner document from parsed JSON, strictly: unknown keys, wrong types and numbers outside their
 * range first, all in one pass; where there are none, what does not fit together (`setUp`).
 *
 * @param value anything
 * @returns a document that `setUp` takes without a fault; or every fault found, with the path of its key
 */
export function readCornerDocument(value: unknown): Outcome<CornerDocument> {
  const faults: Fault[] = [];
  const document = readParts({ value, path: '', faults });
  if (faults.length > 0) return failure(...faults);
  const corner = setUp(document);
  return corner.ok ? success(document) : corner;
}

function readParts(place: Place): CornerDocument {
  const members = readMembers(place, KEYS);
  return withoutAbsent({
    side: readChoice(members.side, ['left', 'right']),
    axis: readAxis(members.axis),
    wheel: readWheel(members.wheel),
    rotation_deg: ifPresent(members.rotation_deg, (at) => readNumber(at, RANGES.rotation)),
    forces: ifPresent(members.forces, (at) => readList(at, readForce)),
    steering: ifPresent(members.steering, readSteering),
    hub: ifPresent(members.hub, readHub),
    change: ifPresent(members.change, readChange),
  });
}

function readWheel(place: Place): WheelDocument {
  const members = readMembers(place, WHEEL_KEYS);
  return withoutAbsent({
    centre_mm: readTriple(members.centre_mm, RANGES.coordinate),
    camber_deg: ifPresent(members.camber_deg, (at) => readNumber(at, RANGES.camber)),
    toe_deg: ifPresent(members.toe_deg, (at) => readNumber(at, RANGES.toe)),
    loadedRadius_mm: readNumber(members.loadedRadius_mm, RANGES.wheelRadius),
    rollingRadius_mm: ifPresent(members.rollingRadius_mm, (at) =>
      readNumber(at, RANGES.wheelRadius),
    ),
  });
}
