import { readdirSync, readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { derivationFacts } from '../../src/lib/lesson/derivation.ts';
import type { LessonModule } from '../../src/lib/lesson/lesson.ts';
import { load as loadOnServer } from '../../src/routes/derivations/[slug]/+page.server.ts';
import { load } from '../../src/routes/derivations/[slug]/+page.ts';
import { TRAINING_CARS } from '../training-cars.ts';
import DerivationRoom from './DerivationRoom.svelte';
import { proseFaults } from './prose.ts';

const FOLDER = new URL('../../derivations/', import.meta.url);
const modules = import.meta.glob<LessonModule>('/derivations/*.md', { eager: true });

const FILES = readdirSync(FOLDER)
  .sort()
  .map((name) => {
    const path = `derivations/${name}`;
    const facts = () => derivationFacts(`/${path}`, modules[`/${path}`]?.metadata ?? {});
    return { path, text: readFileSync(new URL(name, FOLDER), 'utf8'), facts };
  });

test('derivations are numbered without a gap', () => {
  const numbers = FILES.map(({ facts }) => facts().number);
  expect(numbers).toEqual(numbers.map((_, i) => i + 1));
});

describe.each(FILES)('$path', ({ path, text, facts }) => {
  test('says what it needs, of which car its numbers are, and its sources', () => {
    expect(facts().sources.length).toBeGreaterThan(0);
    expect(TRAINING_CARS.map(({ id }) => id)).toContain(facts().car);
  });

  test('holds no number that should be computed, and nothing that would be taken for markup', () => {
    expect(proseFaults({ path, text })).toEqual([]);
  });

  test('is written by the server, with its headings and without a value that is none', async () => {
    const { slug } = facts();
    const params = { slug };
    const data = await loadOnServer({ params } as never);
    const all = await load({ params, data } as never);
    const page = render(DerivationRoom, { props: { data: all as never } }).body;
    for (const [, heading = ''] of text.matchAll(/^## (.+)$/gm))
      expect(page).toContain(`<h2>${heading}</h2>`);
    expect(page).toContain('<math');
    expect(page.replace(/<[^>]*>/g, ' ')).not.toMatch(/NaN|undefined|Infinity/);
  });
});
