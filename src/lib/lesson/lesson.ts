import type { Component } from 'svelte';
import { readLook, type Look } from '$lib/figures/look';
import type { WrittenStep } from './markdown/steps';
import { PARTS, type PartId } from './parts';

/** What a lesson's file says about itself, checked. */
export interface LessonFacts {
  readonly slug: string;
  readonly part: PartId;
  readonly number: number;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  readonly car: string;
  readonly objectives: readonly Objective[];
  /** Exercise kinds asked at the start, from earlier lessons, and at the end. */
  readonly lookBack: readonly string[];
  readonly practice: readonly string[];
  readonly sources: readonly string[];
  readonly steps: readonly Step[];
}

/** What a reader is able to do after a lesson: “work out the scrub radius”. */
export interface Objective {
  readonly able: string;
  /** Kinds among the lesson's exercises that show it; none where only the lesson's own questions ask for it. */
  readonly shownBy: readonly string[];
}

export interface Step {
  readonly title: string;
  readonly look: Look;
  /** Terms of the glossary that are linked in it, where there are any. */
  readonly terms?: readonly string[];
}

export interface LessonModule {
  readonly default: Component;
  readonly metadata: Readonly<Record<string, unknown>>;
}

const PATH = /\/(?<part>[a-z])-[a-z-]+\/(?<number>\d+)-(?<slug>[a-z-]+)\.md$/;

/**
 * Reads what a lesson's front matter and steps say.
 *
 * @throws Error naming the file and what is missing or wrong: such a lesson must not build
 */
export function lessonFacts(path: string, metadata: LessonModule['metadata']): LessonFacts {
  const { part, number, slug } = PATH.exec(path)?.groups ?? {};
  if (!part || !number || !slug || !(part in PARTS)) {
    throw new Error(`${path}: lessons are named like a-axis/01-two-points.md`);
  }
  const fail = (key: string, allowed: string): never => {
    throw new Error(`${path}: ${key} is ${JSON.stringify(metadata[key])}; allowed: ${allowed}`);
  };
  const text = (key: string): string => {
    const value = metadata[key];
    return typeof value === 'string' && value !== '' ? value : fail(key, 'some text');
  };
  const texts = (key: string): string[] => {
    const value = metadata[key] ?? [];
    return Array.isArray(value) && value.every((v) => typeof v === 'string')
      ? value
      : fail(key, 'a list of texts');
  };
  const minutes = metadata['minutes'];
  const objectives = texts('objectives');
  const shows = practiceOf(metadata['practice'], objectives.length) ?? fail('practice', PRACTICE);
  return {
    slug,
    part: part as PartId,
    number: Number(number),
    title: text('title'),
    summary: text('summary'),
    minutes: typeof minutes === 'number' && minutes > 0 ? minutes : fail('minutes', 'a number'),
    car: text('car'),
    objectives: objectives.map((able, i) => ({
      able,
      shownBy: shows.filter(([, numbers]) => numbers.includes(i + 1)).map(([kind]) => kind),
    })),
    lookBack: texts('lookBack'),
    practice: shows.map(([kind]) => kind),
    sources: texts('sources'),
    steps: (metadata['steps'] as readonly WrittenStep[]).map(({ title, look, terms }) => {
      try {
        return { title, look: readLook(look), ...(terms && { terms }) };
      } catch (error) {
        throw new Error(`${path}, step “${title}”: ${(error as Error).message}`, { cause: error });
      }
    }),
  };
}

const PRACTICE = 'exercise kinds, each with the numbers of the objectives it shows: row-loads: [3]';

/** The kinds that are practised, in order, each with the numbers of the objectives it shows, from 1. */
function practiceOf(
  value: unknown,
  objectives: number,
): readonly (readonly [string, readonly number[]])[] | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const isObjective = (number: unknown): boolean =>
    Number.isInteger(number) && Number(number) >= 1 && Number(number) <= objectives;
  const fits = (entry: [string, unknown]): entry is [string, number[]] =>
    Array.isArray(entry[1]) && entry[1].length > 0 && entry[1].every(isObjective);
  const entries = Object.entries(value as Record<string, unknown>);
  return entries.every(fits) ? entries : undefined;
}
