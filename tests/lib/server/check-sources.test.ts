import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkSources, sourcesIn } from '../../../src/lib/server/check-sources.ts';

const TESTS = new URL('../../', import.meta.url);
const FILES = readdirSync(TESTS, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.reference.test.ts'));

test.each([
  ["{ angle: 20, source: 'A book' },", ['A book']],
  ["const BOOK = 'A book';\n{ a: 1, source: BOOK }", ['A book']],
  ["const BOOK =\n  'A book, ' +\n  'page 3';\n{ a: 1, source: BOOK }", ['A book, page 3']],
  ["const BOOK = 'A book';\n{ source: `${BOOK}, page 3` }", ['A book, page 3']],
  ["const source = 'by hand';", ['by hand']],
  ["{ source: 'one' }, { source: 'one' }", ['one']],
  ["import { vec3 } from 'gl-matrix';", ['Recomputed with the quaternions of gl-matrix']],
  ['readonly source: string;', []],
])('in %j the sources are %j', (text, sources) => {
  expect(sourcesIn(text)).toEqual(sources);
});

test.each(FILES)('%s names a source that is found', (name) => {
  expect(sourcesIn(readFileSync(new URL(name, TESTS), 'utf8'))).not.toEqual([]);
});

test('a check value is called after what it checks', () => {
  expect(checkSources().find(({ of }) => of === 'hub rating')?.source).toBeDefined();
});
