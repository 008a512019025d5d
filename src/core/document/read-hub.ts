import type { DutyDocument, HubDocument, RowDocument } from './corner-document.ts';
import type { Place } from './place.ts';
import { RANGES } from './ranges.ts';
import { readChoice } from './read-choice.ts';
import { readList } from './read-list.ts';
import { readMembers } from './read-members.ts';
import { readNumber } from './read-number.ts';

const HUB_KEYS = ['loadLineOffset_mm', 'spread_mm', 'outboard', 'inboard', 'duty'] as const;

const ROW_KEYS = ['kind', 'C_N', 'contactAngle_deg'] as const;

const DUTY_KEYS = ['share', 'vertical_N', 'inward_N'] as const;

/** Reads a hub bearing with its duty cycle. */
export function readHub(place: Place): HubDocument {
  const members = readMembers(place, HUB_KEYS);
  return {
    loadLineOffset_mm: readNumber(members.loadLineOffset_mm, RANGES.offset),
    spread_mm: readNumber(members.spread_mm, RANGES.spread),
    outboard: readRow(members.outboard),
    inboard: readRow(members.inboard),
    duty: readList(members.duty, readDuty, 1),
  };
}

function readRow(place: Place): RowDocument {
  const members = readMembers(place, ROW_KEYS);
  const kind = readChoice(members.kind, ['ball', 'roller', 'tapered']);
  return {
    kind: kind === 'tapered' ? 'roller' : kind,
    C_N: readNumber(members.C_N, RANGES.dynamicRating),
    contactAngle_deg: readNumber(members.contactAngle_deg, RANGES.contactAngle),
  };
}

function readDuty(place: Place): DutyDocument {
  const members = readMembers(place, DUTY_KEYS);
  return {
    share: readNumber(members.share, RANGES.share),
    vertical_N: readNumber(members.vertical_N, RANGES.wheelLoad),
    inward_N: readNumber(members.inward_N, RANGES.force),
  };
}
