import { explainingSteps } from '$lib/bench/explained-by';
import { courseMap } from '$lib/lesson/lessons';
import { benchCars } from '$lib/server/bench-cars';
import type { PageServerLoad } from './$types';

/** The training cars to begin with, and where each result is explained. */
export const load: PageServerLoad = async () => ({
  trainingCars: benchCars(),
  steps: explainingSteps(await courseMap()),
});
