import { note, refuse, type Place } from './place.ts';

/** Reads a text of so many letters at most, without control signs other than line ends where they may stand. */
export function readWords(
  place: Place,
  { least, most, lines = false }: { least: number; most: number; lines?: boolean },
): string {
  const { value } = place;
  const allowed = `a text of ${least === 0 ? 'up' : `${least}`} to ${most} letters`;
  if (typeof value !== 'string') {
    refuse(place, allowed);
    return '';
  }
  const count = value.length;
  if (value.trim().length < least) note(place, 'is empty', allowed);
  else if (count > most) note(place, `has ${count} letters`, allowed);
  else if (CONTROL.test(lines ? value.replaceAll(/[\r\n\t]/g, '') : value))
    note(place, 'has control signs in it', `${allowed} that can be seen`);
  return value;
}

const CONTROL = /\p{Cc}/u;
