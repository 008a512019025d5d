import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where a check value comes from, as its test says it. */
export interface CheckSource {
  readonly source: string;
  /** What is checked: the test's name, in words. */
  readonly of: string;
}

/** A text between quotation marks, or several that are added up. */
const TEXT = String.raw`(?:'(?:[^'\\\n]|\\.)*'|\`[^\`]*\`)`;
const TEXTS = String.raw`${TEXT}(?:\s*\+\s*${TEXT})*`;
const CONSTANT = new RegExp(String.raw`\bconst (\w+)(?:: string)? =\s*(${TEXTS})`, 'g');
const SOURCE = new RegExp(
  String.raw`\bsource(?::| =)\s*(${TEXTS}|[A-Z][A-Z_0-9]*|\w+)(?=[\s,;})])`,
  'g',
);

/** Libraries of others that tests compute with a second time, by what is imported. */
const LIBRARIES: readonly (readonly [RegExp, string])[] = [
  [/from '[^']*mujoco/, 'Recomputed with MuJoCo, a rigid-body engine'],
  [
    /from '(?:three|[^']*three-numbers\.ts)'/,
    'Recomputed with the vectors and quaternions of three.js',
  ],
  [/from '(?:mathjs|[^']*mathjs-numbers\.ts)'/, 'Recomputed with the matrices of mathjs'],
  [/from 'gl-matrix'/, 'Recomputed with the quaternions of gl-matrix'],
];

/** The sources named in a test's text; a name stands for the text that the same file gives it. */
export function sourcesIn(text: string): readonly string[] {
  const constants = new Map(
    [...text.matchAll(CONSTANT)].map(([, name = '', value = '']) => [name, value]),
  );
  const said = (written: string): string =>
    [...written.matchAll(new RegExp(TEXT, 'g'))]
      .map(([part]) =>
        part
          .slice(1, -1)
          .replaceAll(/\\(.)/g, '$1')
          .replaceAll(/\$\{(\w+)\}/g, (_, name: string) => said(constants.get(name) ?? '')),
      )
      .join('');
  const found = [...text.matchAll(SOURCE)].map(([, written = '']) =>
    said(/^['`]/.test(written) ? written : (constants.get(written) ?? '')),
  );
  const recomputed = LIBRARIES.flatMap(([used, source]) => (used.test(text) ? [source] : []));
  return [...new Set([...found, ...recomputed])].filter((source) => source !== '');
}

/** Every source of a check value in the tests of a project; read when the site is built, and no part of it. */
export const checkSources = (project = process.cwd()): readonly CheckSource[] =>
  readdirSync(join(project, 'tests'), { recursive: true })
    .map(String)
    .filter((name) => name.endsWith('.reference.test.ts'))
    .sort()
    .flatMap((name) => {
      const of = name.replaceAll('\\', '/').replace(/^.*\//, '').split('.')[0] ?? '';
      return sourcesIn(readFileSync(join(project, 'tests', name), 'utf8')).map((source) => ({
        source,
        of: of.replaceAll('-', ' '),
      }));
    });
