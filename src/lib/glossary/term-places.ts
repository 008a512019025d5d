import type { LessonFacts } from '$lib/lesson/lesson';
import type { Entry } from './entry';

/** A step of a lesson that shows a term; without a step it is the whole lesson. */
export interface TermPlace {
  readonly slug: string;
  readonly lesson: string;
  readonly step?: { readonly number: number; readonly title: string };
}

/** Where a term is shown: first in the lesson that teaches it, then wherever a lesson links to it. */
export function placesOfTerm(
  { id, lesson }: Pick<Entry, 'id' | 'lesson'>,
  lessons: readonly Pick<LessonFacts, 'slug' | 'title' | 'steps'>[],
): readonly TermPlace[] {
  const places = lessons.flatMap(({ slug, title, steps }): TermPlace[] => {
    const place = steps.findIndex(({ terms = [] }) => terms.includes(id));
    const step = steps[place];
    if (step) return [{ slug, lesson: title, step: { number: place + 1, title: step.title } }];
    return slug === lesson ? [{ slug, lesson: title }] : [];
  });
  return [
    ...places.filter(({ slug }) => slug === lesson),
    ...places.filter(({ slug }) => slug !== lesson),
  ];
}
