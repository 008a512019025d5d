import { describe, expect, test } from 'vitest';
import { isQuantityId } from '#core/quantities.ts';
import type { Entry } from '../../../src/lib/glossary/entry.ts';
import { GLOSSARY, glossaryEntry } from '../../../src/lib/glossary/glossary.ts';
import { LESSON_FILES } from '../../lessons/lesson-files.ts';

const entries: readonly Entry[] = GLOSSARY;
const slugs = LESSON_FILES.map(({ path }) => /\d+-(.+)\.md$/.exec(path)?.[1]);

test('the glossary is in alphabetical order', () => {
  const terms = entries.map(({ term }) => term);
  expect(terms).toEqual([...terms].sort((a, b) => a.localeCompare(b, 'en')));
});

test('no two terms have one name, and no two one address', () => {
  for (const names of [entries.map(({ id }) => id), entries.map(({ term }) => term)]) {
    expect(new Set(names).size).toBe(names.length);
  }
});

describe.each(entries)('$term', (entry) => {
  test('has an address, a meaning in sentences, and a source', () => {
    expect(entry.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(entry.meaning).toMatch(/^[A-Z].{20,}\.$/);
    expect(entry.source).not.toBe('');
    expect(glossaryEntry(entry.id)).toBe(entry);
  });

  test('has other names than its own, each of them once', () => {
    const names = entry.aliases.map((alias) => alias.toLowerCase());
    expect(names).not.toContain(entry.term.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
  });

  test('is taught in a lesson that there is, if in any', () => {
    if (entry.lesson !== undefined) expect(slugs).toContain(entry.lesson);
  });

  test('is a quantity that there is, if one', () => {
    if (entry.quantity !== undefined) expect(isQuantityId(entry.quantity)).toBe(true);
  });
});

test('a term that is not in the glossary does not build, and says which are', () => {
  expect(() => glossaryEntry('kingpin')).toThrow(
    /<Term of="kingpin">: allowed are camber, carrier/,
  );
});
