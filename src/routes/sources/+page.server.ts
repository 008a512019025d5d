import { quantity, type QuantityId } from '#core/quantities.ts';
import { TYPICAL_RANGES } from '#core/typical-ranges.ts';
import { GLOSSARY } from '$lib/glossary/glossary';
import { derivationList } from '$lib/lesson/derivations';
import { courseMap } from '$lib/lesson/lessons';
import { checkSources } from '$lib/server/check-sources';
import { gathered, type Use } from '$lib/sources/gathered';
import type { PageServerLoad } from './$types';

/** Made when the site is built: the check values stand in the tests, and those are not served. */
export const prerender = true;

export const load: PageServerLoad = async () => {
  const [lessons, derivations] = await Promise.all([courseMap(), derivationList()]);
  const uses: Use[] = [
    ...lessons.flatMap(({ slug, title, sources }) =>
      sources.map((source) => ({ source, by: 'lesson' as const, name: title, slug })),
    ),
    ...derivations.flatMap(({ slug, title, sources }) =>
      sources.map((source) => ({ source, by: 'derivation' as const, name: title, slug })),
    ),
    ...Object.entries(TYPICAL_RANGES).map(([id, { source }]) => ({
      source,
      by: 'usual range' as const,
      name: quantity(id as QuantityId).name,
    })),
    ...checkSources().map(({ source, of }) => ({ source, by: 'check value' as const, name: of })),
    ...GLOSSARY.map(({ source, term, id }) => ({
      source,
      by: 'term' as const,
      name: term,
      slug: id,
    })),
  ];
  return { groups: gathered(uses), count: new Set(uses.map(({ source }) => source)).size };
};
