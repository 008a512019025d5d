import { isKindId, KIND_IDS, loadKind } from '#exercises/registry.ts';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => KIND_IDS.map((kind) => ({ kind }));

export const load: PageLoad = async ({ params }) => {
  if (!isKindId(params.kind)) error(404, `There is no kind of exercise called “${params.kind}”.`);
  return { kind: await loadKind(params.kind) };
};
