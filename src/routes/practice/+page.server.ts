import { practisedCourse } from '$lib/lesson/practice-kinds';
import type { PageServerLoad } from './$types';

/** What the list says of lessons and kinds; the kinds themselves come with their own pages. */
export const load: PageServerLoad = () => practisedCourse();
