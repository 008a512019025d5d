import { practisedCourse } from '$lib/lesson/practice-kinds';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => practisedCourse();
