import { capital } from '#core/capital.ts';
import { howSure, SURENESS, type Sureness } from './how-sure';

/** Something that rests on a source. */
export interface Use {
  readonly source: string;
  /** What rests on it: a lesson, a usual range …. */
  readonly by: 'lesson' | 'derivation' | 'usual range' | 'check value' | 'term';
  readonly name: string;
  /** Address of a lesson, a derivation or a term. */
  readonly slug?: string;
}

/** A source with all that rests on it. */
export interface GatheredSource {
  readonly source: string;
  readonly uses: readonly Omit<Use, 'source'>[];
}

export interface SourceGroup {
  readonly sure: Sureness;
  readonly sources: readonly GatheredSource[];
}

/** Every source once, by how sure it is, in alphabetical order. */
export function gathered(uses: readonly Use[]): readonly SourceGroup[] {
  const bySource = new Map<string, Omit<Use, 'source'>[]>();
  for (const { source, ...use } of uses) {
    const key = tidy(source);
    const known = bySource.get(key) ?? [];
    if (!known.some(({ by, name }) => by === use.by && name === use.name)) known.push(use);
    bySource.set(key, known);
  }
  const all = [...bySource]
    .map(([source, own]) => ({ source, uses: own }))
    .sort((a, b) => a.source.localeCompare(b.source, 'en'));
  return (Object.keys(SURENESS) as Sureness[])
    .map((sure) => ({ sure, sources: all.filter(({ source }) => howSure(source) === sure) }))
    .filter(({ sources }) => sources.length > 0);
}

/** With a capital, without the last full stop: the same source, however it was written. */
const tidy = (source: string): string => capital(source.replace(/\.$/, ''));
