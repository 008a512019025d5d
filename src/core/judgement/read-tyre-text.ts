import { refuse, type Place } from '../document/place.ts';
import { parseTyre } from '../tyre/parse-tyre.ts';

/** Reads a tyre’s size as it is marked; it is kept as it was written. */
export function readTyreText(place: Place): string {
  const { value, path, faults } = place;
  if (typeof value !== 'string') {
    refuse(place, 'a size such as "205/55 R16 91V"');
    return '';
  }
  const tyre = parseTyre(value, path);
  if (!tyre.ok) faults.push(...tyre.faults);
  return value;
}
