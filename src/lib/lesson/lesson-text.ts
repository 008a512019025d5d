import type { LessonModule } from './lesson';

/** Of a lesson's file a page fetches what is read; what the file says about itself comes with the page. */
const texts = import.meta.glob<LessonModule['default']>('/lessons/*/*.md', { import: 'default' });

/** The text of a lesson by its address, ready to be shown; undefined where there is none. */
export async function loadLessonText(slug: string): Promise<LessonModule['default'] | undefined> {
  return Object.entries(texts).find(([path]) => slugOf(path) === slug)?.[1]();
}

const slugOf = (path: string): string | undefined => /\/\d+-([^/]+)\.md$/.exec(path)?.[1];
