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
  readonly objectives: readonly string[];
  /** Exercise kinds asked at the start, from earlier lessons, and at the end. */
  readonly lookBack: readonly string[];
  readonly practice: readonly string[];
  readonly sources: readonly string[];
  readonly steps: readonly Step[];
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
  return {
    slug,
    part: part as PartId,
    number: Number(number),
    title: text('title'),
    summary: text('summary'),
    minutes: typeof minutes === 'number' && minutes > 0 ? minutes : fail('minutes', 'a number'),
    car: text('car'),
    objectives: texts('objectives'),
    lookBack: texts('lookBack'),
    practice: texts('practice'),
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
