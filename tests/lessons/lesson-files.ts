import { readdirSync, readFileSync } from 'node:fs';

const PROJECT = new URL('../../', import.meta.url);

/** A lesson as its author wrote it. */
export interface LessonFile {
  /** From the project's folder: `lessons/a-axis/01-two-points.md`. */
  readonly path: string;
  readonly text: string;
}

/** Every lesson, in the order of the course. */
export const LESSON_FILES: readonly LessonFile[] = filesIn('lessons/')
  .flatMap((part) => filesIn(`lessons/${part}/`).map((name) => `lessons/${part}/${name}`))
  .filter((path) => path.endsWith('.md'))
  .map((path) => ({ path, text: readFileSync(new URL(path, PROJECT), 'utf8') }));

/** Number of the line that a place of a text lies in, from 1. */
export const lineAt = (text: string, index: number): number =>
  text.slice(0, index).split('\n').length;

/** The front matter, with its fences. */
export const FRONT_MATTER = /^---\n[\s\S]*?\n---\n/;

/** The text with every match blanked out: what follows keeps its line and its place. */
export const blanked = (text: string, ...patterns: readonly RegExp[]): string =>
  patterns.reduce(
    (left, pattern) => left.replace(pattern, (found) => found.replace(/[^\n]/g, ' ')),
    text,
  );

function filesIn(folder: string): readonly string[] {
  return readdirSync(new URL(folder, PROJECT)).sort();
}
