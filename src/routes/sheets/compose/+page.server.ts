import { loadKinds } from '#exercises/registry.ts';
import { courseMap } from '$lib/lesson/lessons';
import { listed } from '$lib/sheets/listed-kind';
import type { PageServerLoad } from './$types';

/** What there is to choose from; the kinds themselves are fetched when they are chosen. */
export const load: PageServerLoad = async () => {
  const [kinds, lessons] = await Promise.all([loadKinds(), courseMap()]);
  return {
    kinds: kinds.map(listed),
    lessons: lessons.map(({ slug, title }) => ({ slug, title })),
  };
};
