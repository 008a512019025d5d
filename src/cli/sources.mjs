import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** All that the built site is made of. */
const SOURCES = [
  'derivations',
  'lessons',
  'package-lock.json',
  'package.json',
  'seeds',
  'src',
  'svelte.config.js',
  'tsconfig.json',
  'vite.config.ts',
];

/** Tests whose sources a page lists. */
const LISTED = '.reference.test.ts';

/**
 * A fingerprint of the sources in a project: it changes when any file's name or content does.
 *
 * @param {string} folder
 * @returns {string}
 */
export function fingerprint(folder) {
  const hash = createHash('sha256');
  const files = [
    ...SOURCES.flatMap((source) => filesUnder(folder, source)),
    ...filesUnder(folder, 'tests').filter((file) => file.endsWith(LISTED)),
  ];
  for (const file of files) {
    const content = readFileSync(join(folder, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

/**
 * The files at and below a path, as paths from `folder`, in a fixed order, without hidden ones.
 *
 * @param {string} folder
 * @param {string} path
 * @returns {readonly string[]}
 */
function filesUnder(folder, path) {
  const entry = statSync(join(folder, path), { throwIfNoEntry: false });
  if (entry === undefined) return [];
  if (!entry.isDirectory()) return [path];
  return readdirSync(join(folder, path))
    .filter((name) => !name.startsWith('.'))
    .sort()
    .flatMap((name) => filesUnder(folder, `${path}/${name}`));
}
