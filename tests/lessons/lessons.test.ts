import { describe, expect, test } from 'vitest';
import { isQuantityId } from '#core/quantities.ts';
import { KIND_IDS, loadKinds } from '#exercises/registry.ts';
import { isCoordinateId, isCountId, isRatioId } from '#scenes/corner/coordinates.ts';
import { isParameterId } from '#scenes/parameters.ts';
import { GLOSSARY } from '../../src/lib/glossary/glossary.ts';
import { lessonFacts, type LessonModule } from '../../src/lib/lesson/lesson.ts';
import { writtenSetting } from '../../src/lib/lesson/written-setting.ts';
import { TRAINING_CARS } from '../training-cars.ts';
import { LESSON_FILES } from './lesson-files.ts';
import { tagsNamed, tagsOf, wordsIn, type Tag } from './tags.ts';

const modules = import.meta.glob<LessonModule>('/lessons/*/*.md', { eager: true });
const kinds = await loadKinds();

const LESSONS = LESSON_FILES.map((file, place) => ({
  ...file,
  /** In the course, from 0. */
  place,
  facts: () => lessonFacts(`/${file.path}`, modules[`/${file.path}`]?.metadata ?? {}),
}));

/** Tags with a value that is not known, as `file:line: value`. */
const unknown = (tags: readonly Tag[], key: string, known: (word: string) => boolean) =>
  tags.flatMap((tag) =>
    wordsIn(tag, key)
      .filter((word) => !known(word))
      .map((word) => `${tag.place}: ${word}`),
  );

test('the course has lessons, and their numbers run through all parts without a gap', () => {
  expect(LESSONS.length).toBeGreaterThan(0);
  const numbers = LESSONS.map(({ facts }) => facts().number);
  expect(numbers).toEqual(numbers.map((_, i) => i + 1));
});

test('no two lessons have one address', () => {
  const slugs = LESSONS.map(({ facts }) => facts().slug);
  expect(new Set(slugs).size).toBe(slugs.length);
});

describe.each(LESSONS)('$path', ({ facts, place, ...file }) => {
  test('has complete front matter', () => {
    const { objectives, practice, sources, steps } = facts();
    expect(objectives.length, 'objectives').toBeGreaterThan(0);
    expect(practice.length, 'practice').toBeGreaterThan(0);
    expect(sources.length, 'sources').toBeGreaterThan(0);
    expect(steps.length, 'steps').toBeGreaterThan(1);
  });

  test('has a figure in every step, and no two steps of one name', () => {
    const looks = tagsNamed(file, 'Look').map(({ step }) => step);
    expect(looks).toEqual(facts().steps.map((_, i) => i + 1));
    const titles = facts().steps.map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  test('is read with a training car', () => {
    expect(TRAINING_CARS.map(({ id }) => id)).toContain(facts().car);
    const cars = (word: string): boolean => TRAINING_CARS.some(({ id }) => id === word);
    expect(unknown(tagsOf(file), 'car', cars)).toEqual([]);
    expect(unknown(tagsNamed(file, 'Example'), 'on', cars)).toEqual([]);
  });

  test('asks for exercise kinds that there are', () => {
    const asked = [...facts().lookBack, ...facts().practice];
    const known: readonly string[] = KIND_IDS;
    expect(asked.filter((id) => !known.includes(id))).toEqual([]);
  });

  test('shows by each of its exercises what it wants a reader to be able to do', () => {
    const { objectives, practice } = facts();
    const shown = objectives.flatMap(({ shownBy }) => shownBy);
    expect(practice.filter((id) => !shown.includes(id))).toEqual([]);
  });

  test('looks back at two kinds or more of earlier lessons, unless it is the first', () => {
    const { lookBack } = facts();
    const earlier = LESSONS.slice(0, place).map((other) => other.facts().slug);
    const strange = kinds.filter(
      ({ id, lesson }) => lookBack.includes(id) && !earlier.includes(lesson),
    );
    expect(strange.map(({ id, lesson }) => `${id} is taught in ${lesson}`)).toEqual([]);
    if (place > 0) expect(new Set(lookBack).size).toBeGreaterThanOrEqual(2);
  });

  test('practises nothing that a later lesson teaches', () => {
    const { practice } = facts();
    const later = LESSONS.slice(place + 1).map((other) => other.facts().slug);
    const early = kinds.filter(({ id, lesson }) => practice.includes(id) && later.includes(lesson));
    expect(early.map(({ id, lesson }) => `${id} is taught in ${lesson}`)).toEqual([]);
  });

  test('names only terms of the glossary', () => {
    const terms: readonly string[] = GLOSSARY.map(({ id }) => id);
    expect(unknown(tagsNamed(file, 'Term'), 'of', (id) => terms.includes(id))).toEqual([]);
  });

  test('takes its values from quantities, parameters and coordinates that there are', () => {
    const known = (id: string): boolean =>
      [isQuantityId, isParameterId, isCoordinateId, isCountId, isRatioId].some((is) => is(id));
    expect(unknown(tagsNamed(file, 'Value'), 'of', known)).toEqual([]);
    expect(unknown(tagsNamed(file, 'Predict'), 'of', isQuantityId)).toEqual([]);
  });

  test('sets the figure only to what it can be set to', () => {
    for (const { attributes, place } of tagsOf(file)) {
      for (const set of [attributes['set'], attributes['from']]) {
        expect(() => writtenSetting(set ?? ''), place).not.toThrow();
      }
    }
  });

  test('has something to predict where a figure can be moved', () => {
    const moves = facts().steps.some(({ look }) => look.controls.length > 0);
    expect(tagsNamed(file, 'Predict').length).toBeGreaterThanOrEqual(moves ? 1 : 0);
  });

  test('asks for at most one prediction in a step, and explains it there', () => {
    const asked = tagsNamed(file, 'Predict');
    const twice = asked.filter(({ step }, i) => asked.findIndex((tag) => tag.step === step) !== i);
    expect(twice.map(({ place }) => place)).toEqual([]);
    const explained = tagsNamed(file, 'Explain').map(({ step }) => step);
    expect(asked.filter(({ step }) => !explained.includes(step)).map(({ place }) => place)).toEqual(
      [],
    );
  });

  test('lets the reader move what a prediction moved', () => {
    for (const tag of tagsNamed(file, 'Predict')) {
      const controls: readonly string[] = facts().steps[tag.step - 1]?.look.controls ?? [];
      const moved = Object.entries(writtenSetting(tag.attributes['set'] ?? ''))
        .filter(([, value]) => value !== 0)
        .map(([id]) => id);
      expect(
        moved.filter((id) => !controls.includes(id)),
        tag.place,
      ).toEqual([]);
    }
  });
});
