import type { Attempt } from '../record/attempt.ts';
import type { ListedKind } from './listed-kind.ts';

/** What the reader has said of lessons: to be asked about, or not; by their addresses. */
export type LessonWishes = Readonly<Record<string, boolean>>;

/**
 * The kinds that may be asked in a mix: those of lessons that have been reached, unless the reader wants it
 * otherwise. A lesson is reached once it has been read to its end, or one of its kinds has been tried.
 *
 * @param isRead whether a lesson has been read to its end
 */
export function kindsInMix<Kind extends ListedKind>(
  kinds: readonly Kind[],
  attempts: readonly Attempt[],
  isRead: (lesson: string) => boolean,
  wishes: LessonWishes,
): readonly Kind[] {
  const tried = new Set(attempts.map(({ kind }) => kind));
  const lessons = new Set(kinds.filter(({ id }) => tried.has(id)).map(({ lesson }) => lesson));
  return kinds.filter(({ lesson }) => wishes[lesson] ?? (isRead(lesson) || lessons.has(lesson)));
}
