import { fetchFigure } from '$lib/figures/fetched-figures';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data }) => {
  // The corner is what the page begins with: the server draws it, and it is at hand when the page wakes up.
  await fetchFigure('corner');
  return data;
};
