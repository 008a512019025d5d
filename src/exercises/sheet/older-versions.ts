import { fingerprintOf } from './fingerprint.ts';
import type { Sheet } from './sheet.ts';

/** Combinations of versions that are tried; kinds hardly ever get a second version. */
const MOST = 500;

/**
 * The positions of a sheet that were another version of their kind where a fingerprint was taken; empty where no
 * older versions give that fingerprint.
 */
export function olderPositions(sheet: Sheet, fingerprint: string): readonly number[] {
  let older: readonly Sheet[] = [sheet];
  for (const [position, { version }] of sheet.items.entries()) {
    older = older.flatMap((one) =>
      Array.from({ length: version }, (_, less) => withVersion(one, position, version - less)),
    );
    if (older.length > MOST) return [];
  }
  const found = older.find((one) => fingerprintOf(one) === fingerprint);
  return sheet.items.flatMap(({ version }, position) =>
    found && found.items[position]?.version !== version ? [position] : [],
  );
}

const withVersion = (sheet: Sheet, position: number, version: number): Sheet => ({
  ...sheet,
  items: sheet.items.map((item, i) => (i === position ? { ...item, version } : item)),
});
