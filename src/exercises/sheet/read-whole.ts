import { note, refuse, type Place } from '#core/document/place.ts';

/** Bounds of a whole number, both included. */
interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Whether a value is a whole number within bounds. */
const isWhole = (value: unknown, { least, most }: Bounds): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most;

/** Reads a whole number. */
export function readWhole(place: Place, bounds: Bounds): number {
  const { value } = place;
  if (isWhole(value, bounds)) return value;
  const allowed = `a whole number from ${bounds.least} to ${bounds.most}`;
  if (typeof value === 'number') note(place, `is ${value}`, allowed);
  else refuse(place, allowed);
  return bounds.least;
}
