import { readdirSync, readFileSync, statSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('../../../src/lib/ui/fonts/', import.meta.url);
const fonts = readdirSync(folder).filter((name) => name.endsWith('.woff2'));

test('all fonts that a lesson may need weigh at most 60 kB together', () => {
  const sizes = fonts
    .filter((name) => !name.endsWith('-accents.woff2'))
    .map((name) => statSync(new URL(name, folder)).size);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(60_000);
});

test('the style sheet names every font, and no other', () => {
  const sheet = readFileSync(new URL('fonts.css', folder), 'utf8');
  const named = [...sheet.matchAll(/url\('\.\/(.+?)'\)/g)].map(([, name]) => name);
  expect(named.sort()).toEqual(fonts.sort());
});
