import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import { isKindId, loadKind, type ExerciseKind } from '../registry.ts';
import type { Sheet } from './sheet.ts';

/** The kinds of a sheet's items, in their order; a fault for each that this copy of the course has in another version. */
export async function sheetKinds({ items }: Sheet): Promise<Outcome<readonly ExerciseKind[]>> {
  const kinds: ExerciseKind[] = [];
  const faults: Fault[] = [];
  for (const [position, { kind: id, version }] of items.entries()) {
    if (!isKindId(id)) throw new RangeError(`${id} is no exercise kind`);
    const kind = await loadKind(id);
    kinds.push(kind);
    if (kind.version === version) continue;
    faults.push({
      path: `items[${position}].version`,
      wrong: `is ${version}, which this copy of the course does not have`,
      allowed: `${kind.version} for ${id}, or the copy that the sheet was made with`,
    });
  }
  return faults.length > 0 ? failure(...faults) : success(kinds);
}
