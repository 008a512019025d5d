import { quantity, signPhrase } from '#core/quantities.ts';
import type { Entry } from '$lib/glossary/entry';
import { GLOSSARY } from '$lib/glossary/glossary';
import { placesOfTerm } from '$lib/glossary/term-places';
import { courseMap } from '$lib/lesson/lessons';
import { mathML } from '$lib/lesson/markdown/maths';
import type { PageServerLoad } from './$types';

/** Every term with its symbol, its sign in words, and the steps of lessons that show it. */
export const load: PageServerLoad = async () => {
  const lessons = await courseMap();
  const entries: readonly Entry[] = GLOSSARY;
  return {
    aliases: entries
      .flatMap(({ id, term, aliases }) => aliases.map((alias) => ({ alias, id, term })))
      .sort((a, b) => a.alias.localeCompare(b.alias, 'en')),
    entries: entries.map((entry) => {
      const about = entry.quantity && quantity(entry.quantity);
      const { subject = '', positive = '', negative = '' } = about ?? {};
      return {
        ...entry,
        symbol: about ? mathML(about.symbol, false) : '',
        signs:
          about && positive !== ''
            ? `plus, ${subject} ${signPhrase(about, 'positive')}; minus, ${signPhrase(about, 'negative') || negative}`
            : '',
        places: placesOfTerm(entry, lessons).slice(0, MOST_PLACES),
      };
    }),
  };
};

/** Where one meets a term first; later lessons take it for known. */
const MOST_PLACES = 2;
