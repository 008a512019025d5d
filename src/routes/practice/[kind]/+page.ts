import { isKindId, KIND_IDS, loadKind } from '#exercises/registry.ts';
import { fetchDrawing } from '$lib/exercise/pictures/drawing-at-hand';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => KIND_IDS.map((kind) => ({ kind }));

export const load: PageLoad = async ({ params, data }) => {
  if (!isKindId(params.kind)) error(404, `There is no kind of exercise called “${params.kind}”.`);
  const kind = await loadKind(params.kind);
  // What the question speaks of stands on the page from the first, scripts or no scripts.
  const { picture, parts } = kind.exercise('first');
  const isSet = parts.some(({ definition }) => definition.form?.kind === 'set');
  if (picture || isSet) await fetchDrawing();
  return { ...data, kind };
};
