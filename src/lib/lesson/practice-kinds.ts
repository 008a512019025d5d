import { easierKind } from '#exercises/practice/easier-kind.ts';
import type { ListedKind } from '#exercises/practice/listed-kind.ts';
import { loadKinds } from '#exercises/registry.ts';
import type { Objective } from './lesson';
import { courseMap } from './lessons';

/** A kind in the list of all, with what its page is called. */
export interface TitledKind extends ListedKind {
  readonly title: string;
}

/** What practising has to know of a lesson. */
export interface PractisedLesson {
  readonly slug: string;
  readonly title: string;
  readonly steps: number;
  /** What can be shown by exercises. */
  readonly objectives: readonly Objective[];
}

export interface PractisedCourse {
  /** In the order of the course. */
  readonly kinds: readonly TitledKind[];
  readonly lessons: readonly PractisedLesson[];
}

/** Everything that can be practised, lesson by lesson; the kinds themselves are fetched when one is drawn. */
export async function practisedCourse(): Promise<PractisedCourse> {
  const [kinds, lessons] = await Promise.all([loadKinds(), courseMap()]);
  const needs = new Map(lessons.map(({ slug, lookBack }) => [slug, lookBack]));
  const place = (slug: string): number => lessons.findIndex((lesson) => lesson.slug === slug);
  return {
    kinds: kinds
      .map(({ id, title, lesson, level }) => ({
        id,
        title,
        lesson,
        level,
        needs: needs.get(lesson) ?? [],
      }))
      .toSorted((a, b) => place(a.lesson) - place(b.lesson)),
    lessons: lessons.map(({ slug, title, steps, objectives }) => ({
      slug,
      title,
      steps: steps.length,
      objectives: objectives.filter(({ shownBy }) => shownBy.length > 0),
    })),
  };
}

/** What is given, with the easier kind to do first where the course has one. */
export async function withEasier<Row extends { readonly kind: string }>(
  rows: readonly Row[],
): Promise<readonly (Row & { readonly easier?: string })[]> {
  const { kinds } = await practisedCourse();
  return rows.map((row) => {
    const kind = kinds.find(({ id }) => id === row.kind);
    const easier = kind && easierKind(kind, kinds);
    return easier ? { ...row, easier: easier.id } : row;
  });
}
