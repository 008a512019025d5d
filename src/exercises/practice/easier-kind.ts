import type { ListedKind } from './listed-kind.ts';

/**
 * An easier kind to do first: the one a step lower in the same lesson, otherwise the easiest that the lesson
 * looks back to and that is no harder.
 *
 * @param kinds in the order of the course
 * @returns undefined where the course has nothing easier
 */
export function easierKind<Kind extends ListedKind>(
  { id, lesson, level, needs }: ListedKind,
  kinds: readonly Kind[],
): Kind | undefined {
  const lower = kinds.filter((kind) => kind.lesson === lesson && kind.level < level);
  const nearest = lower.toSorted((a, b) => b.level - a.level)[0];
  if (nearest) return nearest;
  return kinds
    .filter((kind) => kind.id !== id && needs.includes(kind.id) && kind.level <= level)
    .toSorted((a, b) => a.level - b.level)[0];
}
