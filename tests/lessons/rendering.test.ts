import { preprocess, compile } from 'svelte/compiler';
import { render } from 'svelte/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import config from '../../svelte.config.js';
import { load as loadOnServer } from '../../src/routes/lessons/[slug]/+page.server.ts';
import { load } from '../../src/routes/lessons/[slug]/+page.ts';
import { LESSON_FILES } from './lesson-files.ts';
import ReadingRoom from './ReadingRoom.svelte';

/** What the compiler says about a lesson's text, with the settings that the site is built with. */
async function warningsOf(text: string, filename: string): Promise<readonly string[]> {
  const { code } = await preprocess(text, config.preprocess ?? [], { filename });
  const { warnings } = compile(code, { ...config.compilerOptions, filename });
  return warnings.map((warning) => `${warning.code}: ${warning.message}`);
}

/** The page of a lesson as the server sends it. */
async function written(slug: string): Promise<string> {
  const params = { slug };
  const data = await loadOnServer({ params } as never);
  const all = await load({ params, data } as never);
  return render(ReadingRoom, { props: { data: all as never } }).body;
}

const warn = vi.spyOn(console, 'warn');
const error = vi.spyOn(console, 'error');

beforeEach(() => {
  warn.mockClear();
  error.mockClear();
});

afterEach(() => {
  expect(warn.mock.calls).toEqual([]);
  expect(error.mock.calls).toEqual([]);
});

describe.each(LESSON_FILES)('$path', ({ path, text }) => {
  const slug = /\d+-(.+)\.md$/.exec(path)?.[1] ?? '';

  test('compiles without a warning', async () => {
    expect(await warningsOf(text, path)).toEqual([]);
  });

  test('is written by the server, every step of it, without a word on the console', async () => {
    const page = await written(slug);
    const headings = Array.from(text.matchAll(/^## (.+)$/gm), ([, heading = '']) => heading);
    for (const heading of headings) {
      expect(page).toContain(`</span>${heading.replaceAll('&', '&amp;')}</h2>`);
    }
    expect(page).toContain('<svg');
  });

  test('says no value that is none', async () => {
    const page = (await written(slug)).replace(/<script[\s\S]*?<\/script>/g, '');
    const words = page.replace(/<[^>]*>/g, ' ');
    expect(words.match(/.{0,40}(?:undefined|NaN|Infinity|\[object|null).{0,40}/g)).toBeNull();
    expect(page.match(/(?:NaN|undefined|Infinity)[^<]{0,40}/g)).toBeNull();
  });
});

test('a picture without words for it would be a warning', async () => {
  const warnings = await warningsOf('## One\n\n<img src="x.png">\n', 'lessons/x.md');
  expect(warnings).toEqual([expect.stringContaining('a11y_missing_attribute')]);
});

test('a lesson that is not there is not found', async () => {
  await expect(written('no-such-lesson')).rejects.toMatchObject({ status: 404 });
});
