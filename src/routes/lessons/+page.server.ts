import { courseMap } from '$lib/lesson/lessons';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async () => ({ lessons: await courseMap() });
