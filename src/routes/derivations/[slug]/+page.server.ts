import { derivationList } from '$lib/lesson/derivations';
import { courseMap } from '$lib/lesson/lessons';
import { trainingCars } from '$lib/server/cars';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageServerLoad } from './$types';

export const entries: EntryGenerator = async () =>
  (await derivationList()).map(({ slug }) => ({ slug }));

/** The cars, the lesson that uses the result, and the derivation that comes after. */
export const load: PageServerLoad = async ({ params }) => {
  const all = await derivationList();
  const place = all.findIndex(({ slug }) => slug === params.slug);
  const facts = all[place];
  if (!facts) error(404, `There is no derivation called “${params.slug}”.`);
  const lesson = (await courseMap()).find(({ slug }) => slug === facts.lesson);
  const next = all[place + 1];
  return {
    cars: trainingCars(),
    lesson: lesson && { slug: lesson.slug, title: lesson.title },
    next: next && { slug: next.slug, title: next.title },
  };
};
