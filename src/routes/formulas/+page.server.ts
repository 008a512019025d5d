import type { FormulaGroup } from '$lib/formulas/formula';
import { FORMULAS } from '$lib/formulas/formulas';
import { SYMBOLS, toldSymbol } from '$lib/formulas/symbols';
import { courseMap } from '$lib/lesson/lessons';
import { mathML } from '$lib/lesson/markdown/maths';
import type { PageServerLoad } from './$types';

/** The formulas, set; a formula whose lesson is not there yet waits for it. */
export const load: PageServerLoad = async () => {
  const lessons = await courseMap();
  const groups: readonly FormulaGroup[] = FORMULAS;
  return {
    groups: groups
      .map(({ name, formulas }) => ({
        name,
        formulas: formulas.flatMap(({ id, tex, gives, note = '', lesson }) => {
          const taught = lessons.find(({ slug }) => slug === lesson);
          if (!taught) return [];
          const { slug, number, title } = taught;
          return [{ id, maths: mathML(tex, true), gives, note, slug, number, title }];
        }),
      }))
      .filter(({ formulas }) => formulas.length > 0),
    symbols: SYMBOLS.map(toldSymbol).map(({ tex, ...said }) => ({
      ...said,
      tex,
      maths: mathML(tex, false),
    })),
  };
};
