import { describe, expect, test } from 'vitest';
import { readLook } from '../../../src/lib/figures/look.ts';
import type { Entry } from '../../../src/lib/glossary/entry.ts';
import { GLOSSARY } from '../../../src/lib/glossary/glossary.ts';
import { placesOfTerm } from '../../../src/lib/glossary/term-places.ts';
import { courseMap } from '../../../src/lib/lesson/lessons.ts';

const look = readLook({ views: 'front' });
const LESSONS = [
  { slug: 'one', title: 'One', steps: [{ title: 'A', look, terms: ['camber'] }] },
  {
    slug: 'two',
    title: 'Two',
    steps: [
      { title: 'B', look },
      { title: 'C', look, terms: ['camber', 'toe'] },
    ],
  },
];

test('a term is shown first in the lesson that teaches it, then where it is linked', () => {
  expect(placesOfTerm({ id: 'camber', lesson: 'two' }, LESSONS)).toEqual([
    { slug: 'two', lesson: 'Two', step: { number: 2, title: 'C' } },
    { slug: 'one', lesson: 'One', step: { number: 1, title: 'A' } },
  ]);
});

test('a lesson that teaches a term without a link to it is a place all the same', () => {
  expect(placesOfTerm({ id: 'caster', lesson: 'one' }, LESSONS)).toEqual([
    { slug: 'one', lesson: 'One' },
  ]);
});

const course = await courseMap();

describe.each<Entry>(GLOSSARY)('$term', (entry) => {
  test('can be seen in a lesson', () => {
    expect(placesOfTerm(entry, course)).not.toEqual([]);
  });
});
