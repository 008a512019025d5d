import type { LessonFacts, LessonModule } from './lesson';

/** What a derivation's file says about itself, checked. */
export interface DerivationFacts {
  readonly slug: string;
  readonly number: number;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  /** The training car that its numbers are of. */
  readonly car: string;
  /** The lesson that uses the result, by its address. */
  readonly lesson: string;
  /** The mathematics that it takes. */
  readonly needs: string;
  readonly sources: readonly string[];
}

const PATH = /\/derivations\/(?<number>\d+)-(?<slug>[a-z-]+)\.md$/;

/**
 * Reads what a derivation's front matter says.
 *
 * @throws Error naming the file and what is missing: such a page must not build
 */
export function derivationFacts(path: string, metadata: LessonModule['metadata']): DerivationFacts {
  const { number, slug } = PATH.exec(path)?.groups ?? {};
  if (!number || !slug)
    throw new Error(`${path}: derivations are named like 01-moment-about-an-axis.md`);
  const fail = (key: string, allowed: string): never => {
    throw new Error(`${path}: ${key} is ${JSON.stringify(metadata[key])}; allowed: ${allowed}`);
  };
  const text = (key: string): string => {
    const value = metadata[key];
    return typeof value === 'string' && value !== '' ? value : fail(key, 'some text');
  };
  const { minutes, sources } = metadata;
  return {
    slug,
    number: Number(number),
    title: text('title'),
    summary: text('summary'),
    minutes: typeof minutes === 'number' && minutes > 0 ? minutes : fail('minutes', 'a number'),
    car: text('car'),
    lesson: text('lesson'),
    needs: text('needs'),
    sources: Array.isArray(sources) ? (sources as string[]) : fail('sources', 'a list of texts'),
  };
}

/** The same as a lesson without steps: what the tags of the lesson kit look for around them. */
export const asLesson = ({
  slug,
  number,
  title,
  summary,
  minutes,
  car,
  sources,
}: DerivationFacts) =>
  ({
    slug,
    part: 'a',
    number,
    title,
    summary,
    minutes,
    car,
    sources,
    objectives: [],
    lookBack: [],
    practice: [],
    steps: [],
  }) satisfies LessonFacts;
