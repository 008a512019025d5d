import type { Typed } from '../read-entry.ts';
import { digestOf } from './digest.ts';

/**
 * What a student hands in: everything as it was typed, and no marks at all. Whoever collects results works the
 * marks out again.
 */
export interface SheetResult {
  readonly format: typeof RESULT_FORMAT;
  readonly version: typeof RESULT_VERSION;
  /** Fingerprint of the sheet. */
  readonly sheet: string;
  /** The number that the instructor gave to the student. */
  readonly number: number;
  /** When it was handed in by the device's own clock, in minutes since 1970 began. Nobody vouches for it. */
  readonly handedIn_min?: number;
  /** One for each item of the sheet. */
  readonly items: readonly ItemWork[];
}

/** A student's work at one exercise. */
export interface ItemWork {
  /** What stood in the fields of its parts, each time that it was checked; the last one may be what was left at the end. */
  readonly attempts: readonly (readonly Typed[])[];
  /** The parts, from 0, whose hints were looked at. */
  readonly hints: readonly number[];
}

/** A result with its checksum. */
export interface SealedResult extends SheetResult {
  readonly check: string;
}

export const RESULT_FORMAT = 'knucklebook result';
export const RESULT_VERSION = 1;

export const RESULT_LIMITS = {
  handedIn_min: { least: 0, most: 99_999_999 },
  /** A number with its unit has room in it, an essay has not. */
  entryLetters: 60,
  /** Of one exercise; none has as many. */
  parts: 9,
} as const;

const CHECK_SIGNS = 8;

/**
 * The checksum of a result. It tells accidents and changes by hand. It is no proof of anything: it is worked out
 * here, in the open, and so can be worked out again for other answers.
 */
export const checkOf = ({ sheet, number, handedIn_min, items }: SheetResult): string =>
  digestOf(
    JSON.stringify([
      RESULT_FORMAT,
      RESULT_VERSION,
      sheet,
      number,
      handedIn_min ?? 'unknown',
      items.map(({ attempts, hints }) => [
        attempts.map((entries) => entries.map(({ text, word }) => [text, word ?? 'none'])),
        hints,
      ]),
    ]),
    CHECK_SIGNS,
  );

export const sealed = (result: SheetResult): SealedResult => ({
  ...result,
  check: checkOf(result),
});
