import { derivationList } from '$lib/lesson/derivations';
import { courseMap } from '$lib/lesson/lessons';
import { job } from '$lib/trails/jobs';
import type { ToldStop } from '$lib/trails/told-stop';
import { trailTime } from '$lib/trails/trail-time';
import { isTrailId, trail, TRAIL_IDS, type Stop } from '$lib/trails/trails';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageServerLoad } from './$types';

export const entries: EntryGenerator = () => TRAIL_IDS.map((who) => ({ who }));

/** The stops that there are, with what is said of each. */
export const load: PageServerLoad = async ({ params }) => {
  if (!isTrailId(params.who)) error(404, `There is no trail called “${params.who}”.`);
  const [lessons, derivations] = await Promise.all([courseMap(), derivationList()]);
  const { id, name, summary, able, stops, goal } = trail(params.who);
  const told = (stop: Stop): readonly ToldStop[] => {
    if (stop.kind === 'job') return [{ kind: stop.kind, ...job(stop.id) }];
    if (stop.kind === 'derivation') {
      const found = derivations.find(({ slug }) => slug === stop.slug);
      return found
        ? [{ kind: stop.kind, slug: found.slug, title: found.title, minutes: found.minutes }]
        : [];
    }
    const found = lessons.find(({ slug }) => slug === stop.slug);
    if (!found) return [];
    const { slug, title, minutes, number, steps } = found;
    return [{ kind: stop.kind, slug, title, minutes, number, steps: steps.length, why: stop.why }];
  };
  return {
    trail: { id, name, summary, able, goal },
    stops: stops.flatMap(told),
    time: trailTime(stops, lessons, derivations),
  };
};
