import { loadDerivation } from '$lib/lesson/derivations';
import { error } from '@sveltejs/kit';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ params, data }) => {
  const derivation = await loadDerivation(params.slug);
  if (!derivation) error(404, `There is no derivation called “${params.slug}”.`);
  return { ...data, ...derivation };
};
