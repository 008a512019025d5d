import type { Entry } from './entry';
import { ALIGNMENT_TERMS } from './alignment-terms';
import { BEARING_TERMS } from './bearing-terms';
import { CHANGE_TERMS } from './change-terms';
import { CORNER_TERMS } from './corner-terms';
import { OWN_CAR_TERMS } from './own-car-terms';
import { STEERING_TERMS } from './steering-terms';
import { TYRE_FORCE_TERMS } from './tyre-force-terms';

/** The glossary, in alphabetical order. */
export const GLOSSARY: readonly Entry[] = [
  ...CORNER_TERMS,
  ...ALIGNMENT_TERMS,
  ...STEERING_TERMS,
  ...TYRE_FORCE_TERMS,
  ...BEARING_TERMS,
  ...CHANGE_TERMS,
  ...OWN_CAR_TERMS,
].sort((a, b) => a.term.localeCompare(b.term, 'en'));

/**
 * The entry of that name.
 *
 * @throws Error for an unknown one: a lesson with a slip of the pen must not build
 */
export function glossaryEntry(id: string): Entry {
  const entry = GLOSSARY.find((one) => one.id === id);
  if (!entry)
    throw new Error(`<Term of="${id}">: allowed are ${GLOSSARY.map((e) => e.id).join(', ')}`);
  return entry;
}
