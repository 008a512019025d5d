import { nearestKey } from './nearest-key.ts';
import { memberPath, note, refuse, type Place } from './place.ts';

/** The places of a record's known members, whether they are there or not. */
export type Members<Key extends string> = Readonly<Record<Key, Place>>;

/**
 * Reads a record: notes what is no record and every key that is not known, with the nearest known one.
 *
 * The members of what is no record are missing without a word, since one fault about the whole is enough.
 */
export function readMembers<Key extends string>(place: Place, keys: readonly Key[]): Members<Key> {
  const { value, path } = place;
  if (!isRecord(value)) {
    refuse(place, `an object with the keys ${keys.join(', ')}`);
    return membersOf({}, keys, { ...place, faults: [] });
  }
  for (const key of Object.keys(value)) {
    if ((keys as readonly string[]).includes(key)) continue;
    const nearest = nearestKey(key, keys);
    const hint = nearest === undefined ? '' : `; did you mean ${nearest}?`;
    note({ ...place, path: memberPath(path, key) }, `is not known here${hint}`, keys.join(', '));
  }
  return membersOf(value, keys, place);
}

/** Reads a member that may be left out. */
export const ifPresent = <Value>(place: Place, read: (place: Place) => Value): Value | undefined =>
  place.value === undefined ? undefined : read(place);

/** Whether a value is a JSON object. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function membersOf<Key extends string>(
  record: Readonly<Record<string, unknown>>,
  keys: readonly Key[],
  { path, faults }: Place,
): Members<Key> {
  const members: Partial<Record<Key, Place>> = {};
  for (const key of keys) {
    const value = Object.hasOwn(record, key) ? record[key] : undefined;
    members[key] = { value, path: path === '' ? key : `${path}.${key}`, faults };
  }
  // The loop has filled in every key.
  return members as Members<Key>;
}
