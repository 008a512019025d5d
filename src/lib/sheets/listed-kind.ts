import type { ExerciseKind } from '#exercises/registry.ts';

/** What a list says of a kind without fetching it. */
export type ListedKind = Pick<
  ExerciseKind,
  'id' | 'version' | 'title' | 'lesson' | 'level' | 'labels'
>;

export interface ListedLesson {
  readonly slug: string;
  readonly title: string;
}

export const listed = ({
  id,
  version,
  title,
  lesson,
  level,
  labels,
}: ExerciseKind): ListedKind => ({ id, version, title, lesson, level, labels });
