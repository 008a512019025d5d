import { onPaper, type PaperExercise } from '#exercises/paper-exercise.ts';
import { isKindId, loadKind } from '#exercises/registry.ts';

/**
 * The exercises that a seed draws of some kinds, as they can be printed.
 *
 * @throws Error for an unknown kind: a lesson with a slip of the pen must not build
 */
export const paperExercises = (
  kinds: readonly string[],
  seed: string,
): Promise<readonly PaperExercise[]> =>
  Promise.all(
    kinds.map(async (id) => {
      if (!isKindId(id)) throw new Error(`there is no exercise kind “${id}”`);
      return onPaper(await loadKind(id), seed);
    }),
  );
