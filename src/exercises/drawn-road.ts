import type { DrawnPart } from './exercise.ts';
import type { PartMark } from './grade.ts';
import { lowerFirst } from './in-words.ts';
import { followed } from './own-road.ts';
import { phrase, type Phrase } from './phrase.ts';
import type { Picture } from './pictures/picture.ts';
import { within } from './tolerance.ts';

/** A wrong road in a drawing, and what stands beside it where somebody came to it with values of their own. */
export interface DrawnRoad {
  readonly picture: Picture;
  readonly beside?: Phrase;
}

/**
 * Draws the wrong road that was taken, from the values that it was taken from; nothing where it cannot be seen, or where
 * no right road leads on from the learner's own values.
 *
 * @param earlier the learner's values before the part, in SI
 * @param wrong the last wrong part before this one
 */
export function drawnRoad(
  part: DrawnPart,
  { slip, fromOwn }: PartMark,
  earlier: readonly number[],
  wrong: DrawnPart | undefined,
): DrawnRoad | undefined {
  const picture = slip?.picture?.();
  // Values that are rounded, but right, are as good as the true ones.
  const isOwn = slip && fromOwn && !within(part.tolerance, slip.follow(earlier), slip.value);
  if (!isOwn || !wrong) return picture && { picture };
  const own = followed(part, earlier) === undefined ? undefined : slip.picture?.(earlier);
  if (!own) return undefined;
  const from = phrase`your own value for “${lowerFirst(wrong.definition.label)}”`;
  const beside =
    JSON.stringify(own) === JSON.stringify(picture)
      ? phrase`Drawn from the true values: ${from} alters nothing in it.`
      : phrase`Drawn from ${from}: solid is what the right way comes to from there, dashed is yours.`;
  return { picture: own, beside };
}
