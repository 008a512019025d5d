import { digestOf } from './digest.ts';
import { SHEET_FORMAT, SHEET_VERSION, type Sheet } from './sheet.ts';

/** Fifty bits: two sheets never share it by accident. */
const SIGNS = 10;

/**
 * What a result says of the sheet that it belongs to. Whatever decides exercises, marks and what the student is
 * shown goes in; title and note do not, so that putting a word right makes no result foreign.
 */
export const fingerprintOf = ({ seed, answers, items }: Sheet): string =>
  digestOf(
    JSON.stringify([
      SHEET_FORMAT,
      SHEET_VERSION,
      seed,
      answers,
      items.map((item) => [
        item.kind,
        item.version,
        item.marks,
        item.attempts,
        item.hintCost_percent ?? 'none',
        item.tolerance,
      ]),
    ]),
    SIGNS,
  );
