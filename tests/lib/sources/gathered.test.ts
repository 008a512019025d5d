import { expect, test } from 'vitest';
import { gathered } from '../../../src/lib/sources/gathered.ts';
import { howSure } from '../../../src/lib/sources/how-sure.ts';

test.each([
  ['ISO 8855:2011, clause 7.2, for names and signs (from memory).', 'memory'],
  ['Usual spindle offsets, common practice, no source.', 'practice'],
  ['common workshop use', 'practice'],
  ['Mott, Machine Elements in Mechanical Design, 4th edition, example 14-6', 'published'],
  ['plane trigonometry, worked by hand', 'computed'],
  ['MuJoCo 3.3.8, three.js, cannon-es and mathjs, which agreed', 'computed'],
  ['The bands of the Linnet are invented for this course.', 'assumed'],
  ['statics (from memory)', 'memory'],
  ['barretire.com, worked example', 'published'],
])('“%s” is %s', (source, sure) => {
  expect(howSure(source)).toBe(sure);
});

test('one source is listed once, with all that rests on it, the surest first', () => {
  const groups = gathered([
    { source: 'statics (from memory).', by: 'lesson', name: 'A', slug: 'a' },
    { source: 'Statics (from memory)', by: 'term', name: 'B', slug: 'b' },
    { source: 'A book, page 3', by: 'check value', name: 'C' },
    { source: 'A book, page 3', by: 'check value', name: 'C' },
  ]);
  expect(groups).toEqual([
    {
      sure: 'published',
      sources: [{ source: 'A book, page 3', uses: [{ by: 'check value', name: 'C' }] }],
    },
    {
      sure: 'memory',
      sources: [
        {
          source: 'Statics (from memory)',
          uses: [
            { by: 'lesson', name: 'A', slug: 'a' },
            { by: 'term', name: 'B', slug: 'b' },
          ],
        },
      ],
    },
  ]);
});
