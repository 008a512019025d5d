import { isKindId, loadKind } from '#exercises/registry.ts';
import { courseMap } from '$lib/lesson/lessons';
import { withEasier } from '$lib/lesson/practice-kinds';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

/** The lesson that teaches the kind, and an easier kind. */
export const load: PageServerLoad = async ({ params }) => {
  const { kind } = params;
  if (!isKindId(kind)) error(404, `There is no kind of exercise called “${kind}”.`);
  const [{ lesson }, lessons] = await Promise.all([loadKind(kind), courseMap()]);
  const taught = lessons.find(({ slug }) => slug === lesson);
  const [listed] = await withEasier([{ kind }]);
  return {
    lesson: taught && { slug: taught.slug, title: taught.title, car: taught.car },
    easier: listed?.easier,
  };
};
