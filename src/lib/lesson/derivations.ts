import { derivationFacts, type DerivationFacts } from './derivation';
import type { LessonModule } from './lesson';

const modules = import.meta.glob<LessonModule>('/derivations/*.md');
const facts = import.meta.glob<LessonModule['metadata']>('/derivations/*.md', {
  import: 'metadata',
});

/** What is known of every derivation, in their order. */
export async function derivationList(): Promise<readonly DerivationFacts[]> {
  const all = await Promise.all(
    Object.entries(facts).map(async ([path, load]) => derivationFacts(path, await load())),
  );
  return all.sort((a, b) => a.number - b.number);
}

/** A derivation ready to be shown. */
export interface LoadedDerivation {
  readonly facts: DerivationFacts;
  readonly Content: LessonModule['default'];
}

/** A derivation by its address; undefined where there is none. */
export async function loadDerivation(slug: string): Promise<LoadedDerivation | undefined> {
  const found = Object.entries(modules).find(([path]) => path.endsWith(`-${slug}.md`));
  if (!found) return undefined;
  const [path, load] = found;
  const { default: Content, metadata } = await load();
  const known = derivationFacts(path, metadata);
  return known.slug === slug ? { facts: known, Content } : undefined;
}
