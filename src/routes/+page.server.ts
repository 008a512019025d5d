import { trainingCars } from '$lib/server/cars';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

/** The car that greets the reader: its small scrub radius shows best what a spacer does. */
const GREETER = 'siskin';

export const load: PageServerLoad = () => {
  const car = trainingCars().find(({ id }) => id === GREETER);
  if (!car) error(500, `The training car ${GREETER} is missing.`);
  return { car };
};
