import type { Fault } from '../fault.ts';

/**
 * A value in a document that is being read: where it stands, and the list that its faults go to.
 *
 * Readers note a fault and answer with a stand-in of the right type, so that one pass finds every
 * fault. Stand-ins never get out: a list with a fault in it means that there is no document.
 */
export interface Place {
  /** Undefined where the document has nothing. */
  readonly value: unknown;
  readonly path: string;
  readonly faults: Fault[];
}

const PLAIN_KEY = /^[A-Za-z_][A-Za-z_0-9]*$/;

/** Notes what is wrong at a place, and what is allowed there. */
export function note({ path, faults }: Place, wrong: string, allowed: string): void {
  faults.push({ path, wrong, allowed });
}

/** Notes that a value is not what is allowed at its place. */
export const refuse = (place: Place, allowed: string): void => {
  note(place, place.value === undefined ? 'is missing' : `is ${spoken(place.value)}`, allowed);
};

/** Path of a member: `wheel.centre_mm`, and `wheel["odd key"]` for what is not a plain word. */
export function memberPath(path: string, key: string): string {
  if (!PLAIN_KEY.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === '' ? key : `${path}.${key}`;
}

/** What a reader found, said in a few words. */
function spoken(value: unknown): string {
  if (typeof value === 'string') {
    const start = value.length > 30 ? `${value.slice(0, 30)}…` : value;
    return `the text ${JSON.stringify(start)}`;
  }
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}
