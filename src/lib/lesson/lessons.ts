import { lessonFacts, type LessonFacts, type LessonModule } from './lesson';

const facts = import.meta.glob<LessonModule['metadata']>('/lessons/*/*.md', {
  import: 'metadata',
});

/** What is known of every lesson, in the order of the course. */
export async function courseMap(): Promise<readonly LessonFacts[]> {
  const lessons = await Promise.all(
    Object.entries(facts).map(async ([path, load]) => lessonFacts(path, await load())),
  );
  return lessons.sort((a, b) => a.part.localeCompare(b.part) || a.number - b.number);
}
