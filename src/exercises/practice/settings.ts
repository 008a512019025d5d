import { note, refuse, type Place } from '#core/document/place.ts';
import { ifPresent, isRecord, readMembers } from '#core/document/read-members.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { dayNumber } from '../record/day.ts';
import type { LessonWishes } from './kinds-in-mix.ts';

/** How a learner wants to practise. */
export interface Settings {
  /** The day by which it is to be known, as `2027-06-30`. */
  readonly horizon?: string;
  /** Exercises in a set. */
  readonly size: number;
  /** Whether to ask how sure one is before the answer is told. */
  readonly sureness: boolean;
  /** Which lessons to ask about, where that is not to follow from what has been read. */
  readonly lessons: LessonWishes;
}

/** How many exercises a set may have. */
export const SIZES = [3, 6, 10, 15] as const;

/** What holds until somebody has chosen otherwise. */
export const USUAL_SETTINGS: Settings = { size: 6, sureness: false, lessons: {} };

/** Reads how somebody practises, as a browser or a file has kept it. */
export function readSettings(place: Place): Settings {
  const members = readMembers(place, ['horizon', 'size', 'sureness', 'lessons'] as const);
  return withoutAbsent({
    horizon: ifPresent(members.horizon, readDay),
    size: readSize(members.size),
    sureness: readYesNo(members.sureness),
    lessons: readWishes(members.lessons),
  });
}

function readDay(place: Place): string {
  const { value } = place;
  if (typeof value === 'string' && dayNumber(value) !== undefined) return value;
  refuse(place, 'a day up to the year 2199, as "2027-06-30"');
  return '';
}

function readSize(place: Place): number {
  const size = SIZES.find((one) => one === place.value);
  if (size !== undefined) return size;
  if (typeof place.value === 'number') note(place, `is ${place.value}`, SIZES.join(', '));
  else refuse(place, SIZES.join(', '));
  return USUAL_SETTINGS.size;
}

function readYesNo(place: Place): boolean {
  if (typeof place.value === 'boolean') return place.value;
  refuse(place, 'true or false');
  return false;
}

function readWishes(place: Place): LessonWishes {
  const { value } = place;
  if (isRecord(value) && Object.values(value).every((wish) => typeof wish === 'boolean'))
    return value as LessonWishes;
  refuse(place, 'an object with the addresses of lessons as keys, and true or false for each');
  return {};
}
