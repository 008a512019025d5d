import { courseMap } from '$lib/lesson/lessons';
import { withEasier } from '$lib/lesson/practice-kinds';
import { trainingCars } from '$lib/server/cars';
import { paperExercises } from '$lib/server/paper-exercises';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageServerLoad } from './$types';

export const entries: EntryGenerator = async () =>
  (await courseMap()).map(({ slug }) => ({ slug }));

export const load: PageServerLoad = async ({ params }) => {
  const facts = (await courseMap()).find(({ slug }) => slug === params.slug);
  if (!facts) error(404, `There is no lesson called “${params.slug}”.`);
  const [lookBack, practice] = await Promise.all([
    paperExercises(facts.lookBack, LOOK_BACK_SEED).then(withEasier),
    paperExercises(facts.practice, facts.slug).then(withEasier),
  ]);
  return { facts, cars: trainingCars(), lookBack, practice, lookBackSeed: LOOK_BACK_SEED };
};

const LOOK_BACK_SEED = 'look-back';
