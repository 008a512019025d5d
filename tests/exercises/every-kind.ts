import { readdirSync } from 'node:fs';
import type { Exercise } from '#exercises/exercise.ts';
import type { Kind } from '#exercises/kind.ts';
import { loadKinds } from '#exercises/registry.ts';

/** A kind as its author wrote it; what its items are made of does not matter here. */
type AnyKind = Kind<object>;

export const registered = await loadKinds();

/** Every kind that lies in the folder, registered or not. */
export const written: readonly AnyKind[] = await Promise.all(
  readdirSync(new URL('../../src/exercises/kinds/', import.meta.url)).map(async (file) => {
    const name = file.replace(/\.ts$/, '');
    const module = (await import(`../../src/exercises/kinds/${name}.ts`)) as Record<
      string,
      AnyKind
    >;
    const [kind] = Object.values(module);
    if (!kind) throw new Error(`${file} exports no kind`);
    return kind;
  }),
);

/** The first exercises of a kind: the audit goes through them, and the tests through a share of them. */
export const exercisesOf = (
  kind: { readonly exercise: (seed: string) => Exercise },
  count: number,
): readonly Exercise[] =>
  Array.from({ length: count }, (_, index) => kind.exercise(`law ${index}`));
