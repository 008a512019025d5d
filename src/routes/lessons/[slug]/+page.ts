import { browser } from '$app/environment';
import { fetchFigure, fetchFigures } from '$lib/figures/fetched-figures';
import { loadLessonText } from '$lib/lesson/lesson-text';
import { stepInAddress } from '$lib/lesson/step-address';
import { error } from '@sveltejs/kit';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ params, data }) => {
  const { steps } = data.facts;
  const [Content] = await Promise.all([
    loadLessonText(params.slug),
    fetchFigures(steps[0]?.look),
    ...(browser ? whatTheAddressShows() : []),
  ]);
  if (!Content) error(404, `There is no lesson called “${params.slug}”.`);
  return { ...data, Content };

  /** Figures of other steps are fetched when they are reached: when the page opens, where it opens in one. */
  function whatTheAddressShows(): readonly Promise<unknown>[] {
    const reached = stepInAddress(location.hash, steps.length) ?? 1;
    const changed = new URLSearchParams(location.search).has('set');
    return [
      ...(reached > 1 ? [fetchFigures(steps[reached - 1]?.look)] : []),
      ...(changed ? [fetchFigure('comparison')] : []),
    ];
  }
};
