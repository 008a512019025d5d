import { readChoice } from '../document/read-choice.ts';
import { readMembers } from '../document/read-members.ts';
import type { Place } from '../document/place.ts';
import { readNumber, type Range } from '../document/read-number.ts';
import type { Fixing } from '../fastening/fixing.ts';

const KEYS = [
  'fastener',
  'thread_mm',
  'pitch_mm',
  'count',
  'circle_mm',
  'reach_mm',
  'depth_mm',
  'wheelThickness_mm',
  'seat',
  'torque_Nm',
] as const;

const LENGTH: Range = { least: 3, most: 100, unit: 'mm' };

/** What the numbers of a fixing may be, both ends included. */
export const FIXING_RANGES = {
  thread_mm: { least: 8, most: 30, unit: 'mm' },
  pitch_mm: { least: 0.75, most: 3.5, unit: 'mm' },
  count: { least: 3, most: 12, unit: '' },
  circle_mm: { least: 60, most: 400, unit: 'mm' },
  reach_mm: LENGTH,
  depth_mm: LENGTH,
  wheelThickness_mm: LENGTH,
  torque_Nm: { least: 20, most: 800, unit: '' },
} as const satisfies Record<string, Range>;

/** Reads what holds a car’s wheels: `{ "fastener": "bolt", "thread_mm": 14, "pitch_mm": 1.5, "count": 5, … }`. */
export function readFixing(place: Place): Fixing {
  const members = readMembers(place, KEYS);
  const number = (key: keyof typeof FIXING_RANGES): number =>
    readNumber(members[key], FIXING_RANGES[key]);
  const metres = (key: keyof typeof FIXING_RANGES): number => number(key) / 1000;
  return {
    fastener: readChoice(members.fastener, ['bolt', 'stud']),
    thread: { diameter: metres('thread_mm'), pitch: metres('pitch_mm') },
    count: number('count'),
    circleRadius: metres('circle_mm') / 2,
    reach: metres('reach_mm'),
    depth: metres('depth_mm'),
    wheelThickness: metres('wheelThickness_mm'),
    seat: readChoice(members.seat, ['cone', 'ball', 'flat']),
    torque: number('torque_Nm'),
  };
}
