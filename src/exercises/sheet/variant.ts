import type { DrawnPart, Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import type { ExerciseKind } from '../registry.ts';
import { exerciseOfSignature } from '../signature.ts';
import { digestOf } from './digest.ts';
import type { Sheet, SheetItem } from './sheet.ts';

/** 130 bits. */
const SEED_SIGNS = 26;

const WIDE = 2;

/** The exercise of a position that shows what all of them are like; no student's own. */
export const MODEL = 'model';

/** Whose variant: the number that the instructor gave to a student. */
export type Whose = number | typeof MODEL;

/**
 * A student's own variant of a sheet: for each position the kind's first exercise, from a seed of sheet, position,
 * kind, version and number, that is as hard as the model of the position: same steps, same pattern, same signs.
 * The same for ever, on every machine.
 *
 * @param kinds those of the items, in their order (see `sheetKinds`)
 */
export const variantOf = (
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  whose: Whose,
): readonly Exercise[] => sheet.items.map((_item, i) => exerciseAt(sheet, kinds, i, whose));

/** The exercise of one position. */
export function exerciseAt(
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  position: number,
  whose: Whose,
): Exercise {
  const item = sheet.items[position];
  const kind = kinds[position];
  if (!item || !kind) throw new RangeError(`position ${position} of ${sheet.items.length}`);
  const model = kind.exercise(seedOf(sheet, item, position, MODEL));
  const drawn =
    whose === MODEL
      ? model
      : exerciseOfSignature(kind, seedOf(sheet, item, position, whose), model.signature());
  return withPolicy(drawn, item);
}

const seedOf = ({ seed }: Sheet, { kind, version }: SheetItem, position: number, whose: Whose) =>
  digestOf(`knucklebook sheet/1|${seed}|${position}|${kind}|${version}|${whose}`, SEED_SIGNS);

/** Slips end four tolerances from the answer and more: twice the tolerance still tells them apart. */
const withPolicy = (exercise: Exercise, { tolerance }: SheetItem): Exercise =>
  tolerance === 'usual'
    ? exercise
    : {
        ...exercise,
        parts: exercise.parts.map(widened),
      };

/** Twice as wide; letters are right or not. */
function widened(part: DrawnPart): DrawnPart {
  const { definition } = part;
  const { form } = definition;
  if (isList(form)) return part;
  const wide = { ...part, tolerance: WIDE * part.tolerance };
  return form
    ? {
        ...wide,
        definition: {
          ...definition,
          form: { ...form, aim: { ...form.aim, near: WIDE * form.aim.near } },
        },
      }
    : wide;
}
