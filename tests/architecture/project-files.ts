import { existsSync, readdirSync, readFileSync } from 'node:fs';

const PROJECT = new URL('../../', import.meta.url);
const FOLDERS = ['src', 'lessons', 'derivations', 'seeds', 'tests'];
const SOURCE = /\.(ts|js|mjs|svelte|md)$/;

export interface SourceFile {
  /** From the project's folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** All source files of the project. */
export const projectFiles = (): readonly SourceFile[] =>
  FOLDERS.filter((folder) => existsSync(new URL(folder, PROJECT)))
    .flatMap(filesUnder)
    .filter((path) => SOURCE.test(path))
    .map((path) => ({ path, text: readFileSync(new URL(path, PROJECT), 'utf8') }));

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(new URL(`${folder}/`, PROJECT), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
