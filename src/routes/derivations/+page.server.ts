import { derivationList } from '$lib/lesson/derivations';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async () => ({ derivations: await derivationList() });
