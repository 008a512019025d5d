import { derivationList } from '$lib/lesson/derivations';
import { courseMap } from '$lib/lesson/lessons';
import { trailTime } from '$lib/trails/trail-time';
import { TRAILS } from '$lib/trails/trails';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async () => {
  const [lessons, derivations] = await Promise.all([courseMap(), derivationList()]);
  return {
    trails: TRAILS.map(({ id, name, summary, able, stops }) => ({
      id,
      name,
      summary,
      able,
      lessons: stops.filter((s) => s.kind === 'lesson' && lessons.some((l) => l.slug === s.slug))
        .length,
      time: trailTime(stops, lessons, derivations),
    })),
  };
};
