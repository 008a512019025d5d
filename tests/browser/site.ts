import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { KIND_IDS } from '#exercises/registry.ts';
import { TRAIL_IDS } from '../../src/lib/trails/trails.ts';

/** A lesson as its file has it, for tests that go through all of them. */
export interface LessonFile {
  readonly slug: string;
  readonly path: string;
  readonly car: string;
  /** Texts of the steps, the first one first. */
  readonly steps: readonly string[];
}

const FOLDER = fileURLToPath(new URL('../../lessons/', import.meta.url));

/** Every lesson, in the order of the course. */
export const LESSONS: readonly LessonFile[] = readdirSync(FOLDER, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.md'))
  .sort()
  .map(readLesson);

/** An address that leads nowhere. */
export const NOWHERE = '/lessons/no-such-lesson';

/** Exercise pages are all of one make: every seventh kind stands for its neighbours. */
const SOME_KINDS = KIND_IDS.filter((_, index) => index % 7 === 0);

const DERIVATIONS = readdirSync(new URL('../../derivations/', import.meta.url)).map(
  (file) => `/derivations/${file.replace(/^\d+-(.+)\.md$/, '$1')}`,
);

/** The pages about sheets, without a sheet. */
export const SHEET_PAGES: readonly string[] = [
  '/sheets',
  '/sheets/compose',
  '/sheets/do',
  '/sheets/collect',
  '/sheets/print',
];

/** One and more of every sort of page but the lessons. */
export const OTHER_PAGES: readonly string[] = [
  '/',
  '/lessons',
  '/practice',
  '/practice/today',
  '/glossary',
  '/trails',
  ...TRAIL_IDS.map((who) => `/trails/${who}`),
  '/formulas',
  '/sources',
  '/derivations',
  ...DERIVATIONS,
  '/bench',
  '/bench/report',
  ...SHEET_PAGES,
  '/kinds',
  '/kinds/spacer-scrub',
  ...SOME_KINDS.map((kind) => `/practice/${kind}`),
  NOWHERE,
];

export const PAGES: readonly string[] = [...LESSONS.map(({ path }) => path), ...OTHER_PAGES];

export const WIDE = { width: 1280, height: 900 } as const;
export const PHONE = { width: 390, height: 844 } as const;

function readLesson(file: string): LessonFile {
  const text = readFileSync(FOLDER + file, 'utf8');
  const [, slug = ''] = /\/\d+-(.+)\.md$/.exec(file.replaceAll('\\', '/')) ?? [];
  const [, car = ''] = /^car: (\w+)$/m.exec(text) ?? [];
  const [, ...steps] = text.split(/^## /m);
  return { slug, path: `/lessons/${slug}`, car, steps };
}
