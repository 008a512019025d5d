import type { Fault } from '#core/fault.ts';
import type { ExerciseKind } from '../registry.ts';
import { fingerprintOf } from './fingerprint.ts';
import { misfits } from './fits-sheet.ts';
import { markResult, type MarkedResult } from './mark-result.ts';
import { olderPositions } from './older-versions.ts';
import type { Piece } from './pieces.ts';
import { checkOf, type SealedResult } from './result.ts';
import type { Sheet } from './sheet.ts';
import { variantOf } from './variant.ts';

export interface Accepted {
  readonly name: string;
  readonly marked: MarkedResult;
}

/** Why a piece does not count. */
export type RefusedFor =
  | 'unreadable'
  | 'tampered'
  /** Of this sheet, when one of its kinds was an older version. */
  | 'outdated'
  | 'foreign'
  | 'impossible'
  | 'duplicate';

export interface Refused {
  readonly name: string;
  readonly why: RefusedFor;
  /** The number that the piece gives, where it could be read. */
  readonly number?: number;
  readonly faults: readonly Fault[];
}

export interface Collection {
  /** By the students' numbers. */
  readonly accepted: readonly Accepted[];
  /** In the order in which they came. */
  readonly refused: readonly Refused[];
}

/**
 * Takes in what was handed in for a sheet: what can be read, fits its checksum, belongs to this very sheet and could
 * have been done on it is marked anew; the rest is refused with the reason. The first result of a number counts.
 */
export function collect(
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  pieces: readonly Piece[],
): Collection {
  const fingerprint = fingerprintOf(sheet);
  const accepted = new Map<number, Accepted & { readonly check: string }>();
  const refused: Refused[] = [];
  for (const { name, result } of pieces) {
    if (!result.ok) {
      refused.push({ name, why: 'unreadable', faults: result.faults });
      continue;
    }
    const { value } = result;
    const { number, check } = value;
    const refuse = (why: RefusedFor, ...faults: readonly Fault[]): void => {
      refused.push({ name, why, number, faults });
    };
    const earlier = accepted.get(number);
    if (check !== checkOf(value)) refuse('tampered', TAMPERED);
    else if (value.sheet !== fingerprint) {
      const older = olderPositions(sheet, value.sheet);
      if (older.length > 0) refuse('outdated', outdated(value, fingerprint, kinds, older));
      else refuse('foreign', foreign(value, fingerprint));
    } else if (earlier) refuse('duplicate', duplicate(number, earlier, check));
    else {
      const variant = variantOf(sheet, kinds, number);
      const faults = misfits(sheet, variant, value);
      if (faults.length > 0) refuse('impossible', ...faults);
      else accepted.set(number, { name, check, marked: markResult(sheet, variant, value) });
    }
  }
  const byNumber = [...accepted.entries()].sort(([a], [b]) => a - b);
  return { accepted: byNumber.map(([, { name, marked }]) => ({ name, marked })), refused };
}

const TAMPERED: Fault = {
  path: 'check',
  wrong: 'does not fit what stands in the result: it was changed after handing in, or damaged',
  allowed: 'the result just as it was handed in',
};

const foreign = ({ sheet }: SealedResult, fingerprint: string): Fault => ({
  path: 'sheet',
  wrong: `is ${sheet}: another sheet, or another version of this one`,
  allowed: `${fingerprint}, this sheet`,
});

const outdated = (
  { sheet }: SealedResult,
  fingerprint: string,
  kinds: readonly ExerciseKind[],
  positions: readonly number[],
): Fault => ({
  path: 'sheet',
  wrong: `is ${sheet}: this sheet with an older version of ${positions
    .map((position) => `“${kinds[position]?.title ?? position}”`)
    .join(' and ')}, which had other numbers`,
  allowed: `${fingerprint}, the sheet as it is now; to mark this one, open the old sheet in the copy of the course that it was made with`,
});

const duplicate = (
  number: number,
  earlier: Accepted & { readonly check: string },
  check: string,
): Fault => ({
  path: 'number',
  wrong: `is ${number}, which has handed in already (${earlier.name}), ${
    earlier.check === check ? 'the very same answers' : 'with other answers or at another time'
  }`,
  allowed: 'one result for each number; remove the other one to take this',
});
