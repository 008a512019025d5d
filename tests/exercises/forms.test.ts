import { describe, expect, test } from 'vitest';
import { toSI } from '#core/units/convert.ts';
import { isList } from '#exercises/forms/form.ts';
import { lettersOf, orderOf, orders, rankOf } from '#exercises/forms/rank.ts';
import { grade } from '#exercises/grade.ts';
import { wantedInWords } from '#exercises/in-words.ts';
import { plain, rounded, type Phrase } from '#exercises/phrase.ts';
import { readEntry } from '#exercises/read-entry.ts';
import { loadKind, loadKinds } from '#exercises/registry.ts';
import { respond } from '#exercises/respond.ts';

const marked = (await loadKind('marked-across')).exercise('a');
const ordered = (await loadKind('order-by-moment')).exercise('a');
const set = (await loadKind('set-wheel-for-scrub')).exercise('a');
const chart = (await loadKind('read-life-chart')).exercise('a');

const answer = (exercise: typeof marked, index: number): number =>
  exercise.parts[index]?.answer ?? NaN;

describe('the rank of an order', () => {
  test('counts the orders of a dictionary from 1', () => {
    expect(rankOf([0, 1, 2, 3])).toBe(1);
    expect(rankOf([3, 2, 1, 0])).toBe(orders(4));
    expect(lettersOf(orderOf(2, 4))).toBe('A B D C');
  });

  test('comes back from every order of five', () => {
    for (let rank = 1; rank <= orders(5); rank++) expect(rankOf(orderOf(rank, 5))).toBe(rank);
  });
});

describe('letters', () => {
  const [choice] = marked.parts;
  const [order] = ordered.parts;
  if (!choice || !order) throw new Error('parts are missing');

  test.each([
    ['B', 2],
    [' b ', 2],
    ['(b)', 2],
    ['2', 2],
  ])('%s is the second one', (text, value) => {
    expect(readEntry({ text }, choice.definition)).toEqual({ kind: 'value', value });
  });

  test.each(['D C B A', 'dcba', 'd, c, b, a', 'D > C > B > A', '4321'])(
    '%s is the last order of four',
    (text) => {
      expect(readEntry({ text }, order.definition)).toEqual({ kind: 'value', value: 24 });
    },
  );

  test.each(['F', 'AB', '9', 'x', '½'])('%s is none of five', (text) => {
    expect(readEntry({ text }, choice.definition)).toMatchObject({
      kind: 'problem',
      message: 'Choose one of the letters A to E.',
    });
  });

  test.each(['ABC', 'AABC', 'ABCE', 'ABCDE'])('%s is no order of four', (text) => {
    expect(readEntry({ text }, order.definition)).toMatchObject({ kind: 'problem' });
  });

  test('an empty field stays empty', () => {
    expect(readEntry({ text: ' ' }, choice.definition)).toEqual({ kind: 'empty' });
  });
});

describe('what may be a guess', () => {
  test('earns nothing by itself, and says why', () => {
    const entries = [answer(marked, 0), undefined];
    expect(grade(marked, entries)).toMatchObject({ earned: 0, parts: [{ verdict: 'alone' }, {}] });
    expect(plain(respond(marked, entries, 0).words)).toContain('bears it out');
  });

  test('earns its mark with a number that is right, or that is a known slip', () => {
    expect(grade(marked, [answer(marked, 0), answer(marked, 1)]).earned).toBe(2);
    const slip = marked.parts[1]?.slips()[0]?.value;
    expect(grade(marked, [answer(marked, 0), slip])).toMatchObject({
      earned: 1,
      parts: [{ verdict: 'right' }, { verdict: 'slip' }],
    });
  });

  test('does not vouch for anything, but is vouched for', () => {
    expect(grade(marked, [undefined, answer(marked, 1)]).earned).toBe(2);
  });

  test('a wrong letter costs itself alone: the length of what was marked follows on', () => {
    const [first, second] = marked.parts;
    for (const { value } of first?.slips() ?? []) {
      const length = second?.follow([value]);
      expect(grade(marked, [value, length]).parts.map(({ verdict }) => verdict)).toEqual([
        'slip',
        'follow-on',
      ]);
    }
  });

  test('an order on no known road is told where to begin', () => {
    const [part] = ordered.parts;
    const known = [part?.answer, ...(part?.slips().map(({ value }) => value) ?? [])];
    const strange = Array.from({ length: 24 }, (_, i) => i + 1).find(
      (rank) => !known.includes(rank),
    );
    expect(plain(respond(ordered, [strange, undefined], 0).words)).toMatch(
      /[A-D] stands before [A-D]; work both out/,
    );
  });
});

describe('a setting', () => {
  const [, part] = set.parts;
  const form = part?.definition.form;
  if (part === undefined || form === undefined || isList(form)) throw new Error('no setting');

  test('is right where the core finds what is wanted, as near as it says', () => {
    const verdict = (off: number): string | undefined =>
      grade(set, [answer(set, 0), part.answer + toSI(off, 'mm')]).parts[1]?.verdict;
    expect(verdict(0.99)).toBe('right');
    expect(verdict(-0.99)).toBe('right');
    expect(verdict(1.2)).not.toBe('right');
  });

  test('is told what it comes to, where it fits nothing', () => {
    const words = plain(respond(set, [answer(set, 0), part.answer + toSI(33, 'mm')], 1).words);
    expect(words).toContain('The scrub radius is then');
  });

  test('without a sign is asked for one, since there are no words to choose from', () => {
    expect(readEntry({ text: '12' }, part.definition)).toMatchObject({
      kind: 'problem',
      message: expect.stringMatching(
        /^Which way\? Put \+ for .+ or − for .+ before the number\.$/,
      ) as string,
    });
    expect(readEntry({ text: '+12' }, part.definition).kind).toBe('value');
  });

  test('follows on from a wrong reading of how things stand', () => {
    const [first] = set.parts;
    const wrong = first?.slips()[0]?.value ?? NaN;
    const marks = grade(set, [wrong, part.follow([wrong])]);
    expect(marks.parts.map(({ verdict }) => verdict)).toEqual(['slip', 'follow-on']);
  });
});

test('what is to be reached by a setting has no number that the question has not', async () => {
  const numbers = (words: Phrase): readonly string[] => plain(words).match(/\d+(\.\d+)?/g) ?? [];
  let settings = 0;
  for (const kind of await loadKinds()) {
    const exercise = kind.exercise('a');
    for (const { definition } of exercise.parts) {
      const { form } = definition;
      if (!form || isList(form)) continue;
      settings++;
      const near = numbers([rounded(form.aim.near, form.aim.unit, form.aim.decimals)]);
      const inQuestion = numbers(exercise.question()).map(Number);
      for (const number of numbers(wantedInWords(form)))
        if (!near.includes(number)) expect(inQuestion, kind.id).toContain(Number(number));
    }
  }
  expect(settings).toBeGreaterThan(2);
});

test('a chart may be read half a division off, and what follows from the reading is right', () => {
  const read = answer(chart, 0) + toSI(4.9, 'Mrev');
  const way = chart.parts[2]?.follow([read, answer(chart, 1)]);
  expect(grade(chart, [read, answer(chart, 1), way]).earned).toBe(3);
  const far = answer(chart, 0) + toSI(8, 'Mrev');
  expect(grade(chart, [far, undefined, undefined]).parts[0]?.verdict).toBe('unknown');
});
