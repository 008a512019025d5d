import { courseMap } from '$lib/lesson/lessons';
import { outlineOf } from '$lib/sheets/treating-step';
import type { PageServerLoad } from './$types';

/** The steps of the lessons, to say which of them treats a slip. */
export const load: PageServerLoad = async () => ({ lessons: (await courseMap()).map(outlineOf) });
