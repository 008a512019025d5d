/**
 * What is wrong with something a person gave us: a value, not an exception, so that it can be shown
 * at the place of the mistake.
 */
export interface Fault {
  /** Where: the path of the key in a document (`wheel.loadedRadius_mm`), or the name of a field. Empty for the whole. */
  readonly path: string;
  /** What is wrong, as a half-sentence: `is 0`, `is missing`. */
  readonly wrong: string;
  /** What is allowed, as a half-sentence: `a number from 50 to 2000`. */
  readonly allowed: string;
}

/** Either the value or every fault that kept us from it (at least one). */
export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const success = <Value>(value: Value): Outcome<Value> => ({ ok: true, value });

export const failure = (...faults: readonly Fault[]): Outcome<never> => ({ ok: false, faults });

/** The faults of an outcome: none where there is a value. */
export const faultsOf = (outcome: Outcome<unknown>): readonly Fault[] =>
  outcome.ok ? [] : outcome.faults;

/** One line for a person: `wheel.loadedRadius_mm: is 0; allowed: a number from 50 to 2000`. */
export const faultLine = ({ path, wrong, allowed }: Fault): string =>
  `${path === '' ? 'the whole document' : path}: ${wrong}; allowed: ${allowed}`;
