import type { Exercise } from './exercise.ts';

const MOST_SEEDS = 1000;

/**
 * The first exercise of a wanted signature, from the seed itself and then from seeds made out of it. So
 * everybody who gets the same place on a sheet gets the same steps and the same signs, with other numbers.
 * What is stored is the seed of the exercise that comes back.
 *
 * @throws Error where a thousand seeds give none: the kind does not have that signature
 */
export function exerciseOfSignature(
  kind: { readonly id: string; readonly exercise: (seed: string) => Exercise },
  seed: string,
  signature: string,
): Exercise {
  for (let round = 0; round < MOST_SEEDS; round++) {
    const exercise = kind.exercise(round === 0 ? seed : `${seed}~${round}`);
    if (exercise.signature() === signature) return exercise;
  }
  throw new Error(`no exercise of ${kind.id} with the signature “${signature}” from ${seed}`);
}
