import { note, refuse, type Place } from './place.ts';

/** Reads a list of any length, each of its members by the same reader. */
export function readList<Value>(
  place: Place,
  read: (place: Place) => Value,
  least = 0,
): readonly Value[] {
  const { value, path, faults } = place;
  if (!Array.isArray(value)) {
    refuse(place, 'a list [ … ]');
    return [];
  }
  if (value.length < least)
    note(place, `has ${value.length} members`, `a list of ${least} or more`);
  return value.map((member: unknown, index) =>
    read({ value: member, path: `${path}[${index}]`, faults }),
  );
}
