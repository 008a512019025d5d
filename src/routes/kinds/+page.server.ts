import { loadKinds } from '#exercises/registry.ts';
import { courseMap } from '$lib/lesson/lessons';
import { listed } from '$lib/sheets/listed-kind';
import type { PageServerLoad } from './$types';

/** All kinds, in the order of the lessons. */
export const load: PageServerLoad = async () => {
  const [kinds, lessons] = await Promise.all([loadKinds(), courseMap()]);
  return {
    kinds: kinds.map(listed),
    lessons: lessons.map(({ slug, title }) => ({ slug, title })),
  };
};
