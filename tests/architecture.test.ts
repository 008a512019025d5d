import { describe, expect, test } from 'vitest';
import { importFaults } from './architecture/import-faults.ts';
import { importsOf } from './architecture/imports.ts';
import { layerOf, PURE_LAYERS } from './architecture/layers.ts';
import { projectFiles } from './architecture/project-files.ts';
import { purityFaults } from './architecture/purity-faults.ts';

const MOST_LINES = 350;

describe('the project', () => {
  const files = projectFiles();
  const pure = files.filter(({ path }) => PURE_LAYERS.some((layer) => layer === layerOf(path)));

  test('was found', () => {
    expect(files.map(({ path }) => path)).toContain('src/core/vector.ts');
    expect(pure.length).toBeGreaterThan(5);
  });

  test('imports only what its layers allow', () => {
    expect(files.flatMap(({ path, text }) => importFaults(path, text))).toEqual([]);
  });

  test('has no clock, chance or machine in its pure layers', () => {
    expect(pure.flatMap(({ path, text }) => purityFaults(path, text))).toEqual([]);
  });

  test(`has no source file over ${MOST_LINES} lines: such a file does more than one job`, () => {
    const long = files
      .map(({ path, text }) => ({ path, lines: text.trimEnd().split('\n').length }))
      .filter(({ path, lines }) => path.startsWith('src/') && lines > MOST_LINES);
    expect(long).toEqual([]);
  });
});

describe('imports are found', () => {
  test.each([
    ['a plain import', "import { a } from './a.ts';", './a.ts'],
    ['a type-only import', "import type { A } from './a.ts';", './a.ts'],
    ['a re-export', "export * from './a.ts';", './a.ts'],
    ['an import for its effect', "import './a.ts';", './a.ts'],
    ['a dynamic import', "const a = await import('./a.ts');", './a.ts'],
    ['a type written as an import', "let a: import('./a.ts').A;", './a.ts'],
    ['a glob', "import.meta.glob('./a/*.ts', { eager: true });", './a/*.ts'],
    ['a typed glob of several', "import.meta.glob<A>(['./a/*.ts', './b/*.ts']);", './b/*.ts'],
  ])('in %s', (_, text, expected) => {
    expect(importsOf('src/lib/x.ts', text)).toContain(expected);
  });

  test('in the scripts of a component, but not in its prose', () => {
    const text =
      '<script lang="ts">\nimport A from "./A.svelte";\n</script>\n<p>import "./b.ts"</p>';
    expect(importsOf('src/lib/X.svelte', text)).toEqual(['./A.svelte']);
  });

  test('but not in comments and strings', () => {
    expect(importsOf('src/lib/x.ts', "// import './a.ts'\nconst b = `import './b.ts'`;")).toEqual(
      [],
    );
  });
});

describe('a forbidden import is a fault with its reason', () => {
  test.each([
    ['src/core/x.ts', "import { a } from '#scenes/a.ts';", 'core must not import scenes'],
    ['src/core/x.ts', "import { a } from '../scenes/a.ts';", 'core must not import scenes'],
    ['src/core/x.ts', "import { a } from '$lib/a.ts';", 'core must not import lib'],
    ['src/core/x.ts', "import { readFile } from 'node:fs';", 'core must not need Node itself'],
    ['src/core/x.ts', "import { readFile } from 'fs';", 'core must not need Node itself'],
    ['src/core/x.ts', "import { line } from 'd3-shape';", 'core may import no package'],
    ['src/core/x.ts', "import { a } from './a';", 'plain Node needs the file’s ending'],
    [
      'src/exercises/x.ts',
      "import type { A } from '#scenes/a.ts';",
      'exercises must not import scenes',
    ],
    ['src/exercises/x.ts', "import { a } from '../core/a.ts';", 'imported by its name'],
    ['src/exercises/x.ts', "import fc from 'fast-check';", 'exercises may import pure-rand'],
    ['src/scenes/x.ts', "import { a } from '#exercises/a.ts';", 'scenes must not import exercises'],
    ['src/scenes/x.ts', "import { select } from 'd3-selection';", 'scenes may import d3'],
    [
      'src/lib/X.svelte',
      "<script>import a from './server/a.ts';</script>",
      'lib must not import server',
    ],
    ['src/lib/x.ts', "import katex from 'katex';", 'no maths script reaches the reader'],
    ['src/lib/x.ts', "import { page } from '$app/stores';", '$app/state has'],
    ['src/lib/server/x.ts', "import a from '$lib/A.svelte';", 'server must not import lib'],
    ['src/cli/x.mjs', "import '../../tests/x.ts';", 'cli must not import tests'],
    ['src/routes/+page.ts', "import '../cli/x.mjs';", 'routes must not import cli'],
    [
      'lessons/x.md',
      "<script>import a from '../src/core/a.ts';</script>",
      'lessons must not import core',
    ],
    ['seeds/x.ts', "import '#core/a.ts';", 'seeds must not import core'],
  ])('%s: %s', (path, text, reason) => {
    expect(importFaults(path, text)).toEqual([expect.stringContaining(reason)]);
  });
});

test.each([
  ['src/core/x.ts', "import { a } from './a.ts';"],
  ['src/exercises/x.ts', "import { mersenne } from 'pure-rand/generator/mersenne';"],
  ['src/exercises/x.ts', "import { sha256 } from '@noble/hashes/sha2.js';"],
  ['src/scenes/x.ts', "import { a } from '#core/a.ts'; import { scaleLinear } from 'd3-scale';"],
  ['src/lib/lesson/markdown/x.js', "import katex from 'katex';"],
  ['src/routes/+page.server.ts', "import { a } from '$lib/server/a.ts'; import fs from 'node:fs';"],
  ['lessons/x.md', "<script>import A from '$lib/lesson/A.svelte';</script>"],
])('an allowed import is no fault: %s: %s', (path, text) => {
  expect(importFaults(path, text)).toEqual([]);
});

describe('in a pure layer', () => {
  test.each(['Math.random()', 'Date.now()', 'new Date()', 'process.env', 'console.log(1)'])(
    '%s is a fault with its line',
    (code) => {
      expect(purityFaults('src/core/x.ts', `const a = 1;\nconst b = ${code};`)).toEqual([
        expect.stringContaining('src/core/x.ts:2 uses'),
      ]);
    },
  );

  test.each([
    '// Math.random is forbidden here',
    "const a = 'new Date()';",
    'const a = Math.round(1.5);',
    'const a = { process: 1 }.process;',
    'const read = (document: string) => document.length;',
  ])('%s is none', (code) => {
    expect(purityFaults('src/core/x.ts', code)).toEqual([]);
  });
});
