import { describe, expect, test } from 'vitest';
import type { Formula, FormulaGroup } from '../../../src/lib/formulas/formula.ts';
import { FORMULAS } from '../../../src/lib/formulas/formulas.ts';
import { SYMBOLS, toldSymbol } from '../../../src/lib/formulas/symbols.ts';
import { mathML } from '../../../src/lib/lesson/markdown/maths.ts';
import { LESSON_FILES } from '../../lessons/lesson-files.ts';

const groups: readonly FormulaGroup[] = FORMULAS;
const formulas: readonly Formula[] = groups.flatMap((group) => group.formulas);
const slugs = LESSON_FILES.map(({ path }) => /\d+-(.+)\.md$/.exec(path)?.[1] ?? '');

/** Later lessons have their formulas on the sheet before they are written; then none may be left over. */
const whole = slugs.includes('capstone');

/** The same formula, however it is spaced. */
const bare = (tex: string): string =>
  tex.replaceAll(/\\[,;! ]|\\q?quad|\\displaystyle|[\s{}]/g, '').replaceAll(/[.,]$/g, '');

test('every formula that a lesson displays is on the sheet', () => {
  const known = new Set(formulas.flatMap(({ tex, also = [] }) => [tex, ...also]).map(bare));
  const missing = LESSON_FILES.flatMap(({ path, text }) =>
    [...text.matchAll(/^\$\$\n([\s\S]+?)\n\$\$$/gm)].flatMap(([, tex = '']) =>
      known.has(bare(tex)) ? [] : [`${path}: ${tex}`],
    ),
  );
  expect(missing).toEqual([]);
});

test('no two formulas have one name', () => {
  const ids = formulas.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(formulas)('$id', ({ tex, lesson, gives }) => {
  test('can be set, is taught in a lesson, and says what it gives', () => {
    expect(mathML(tex, true)).toContain('<math');
    if (whole) expect(slugs).toContain(lesson);
    expect(lesson).not.toBe('');
    expect(gives).not.toBe('');
  });
});

test('formulas stand in the order of the course, group by group', () => {
  for (const { name, formulas: own } of groups) {
    const places = own.map(({ lesson }) => slugs.indexOf(lesson)).filter((place) => place >= 0);
    expect(places, name).toEqual([...places].sort((a, b) => a - b));
  }
});

test.each(SYMBOLS.map(toldSymbol))('the symbol $tex has a name and can be set', (symbol) => {
  expect(mathML(symbol.tex, false)).toContain('<math');
  expect(symbol.name).not.toBe('');
});

test('a symbol with a sign says what its positive side means', () => {
  expect(toldSymbol({ quantity: 'scrubRadius' })).toEqual({
    tex: 'r',
    name: 'scrub radius',
    unit: 'mm',
    positive: 'the axis meets the road inboard',
  });
});
