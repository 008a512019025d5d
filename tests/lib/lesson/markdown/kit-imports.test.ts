import { existsSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { familiesIn, KIT, kitImports } from '../../../../src/lib/lesson/markdown/kit-imports.ts';
import { html } from '../../../../src/lib/lesson/markdown/tree.ts';

const FOLDER = new URL('../../../../src/lib/lesson/kit/', import.meta.url);

test('the kit is what its folder holds', () => {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith('.svelte'));
  expect(files).toEqual(KIT.map((name) => `${name}.svelte`).sort());
  expect(existsSync(new URL('Look.svelte', FOLDER))).toBe(false);
});

test('a lesson imports the parts that it uses, and no others', () => {
  const text = html('<Value of="camber" /> and <Term of="camber">camber</Term>');
  const [script, ...rest] = kitImports()({ type: 'root', children: [text] }).children ?? [];
  expect(script?.value?.match(/import \w+/g)).toEqual(['import Value', 'import Term']);
  expect(script?.value).toContain("from '$lib/lesson/kit/Value.svelte';");
  expect(rest).toEqual([text]);
});

test('a name that only begins like a part is none', () => {
  const tree = kitImports()({ type: 'root', children: [html('<Values /> Value')] });
  expect(tree.children?.[0]?.value).not.toContain('import');
});

test('a lesson imports the arithmetic of the quantities that its text and its figure name', () => {
  const text = html('<Value of="hubLife" /> on a <Term of="track">track</Term>');
  const file = { data: { fm: { steps: [{ title: 'A', look: { measures: 'trail clampLoad' } }] } } };
  const [script] = kitImports()({ type: 'root', children: [text] }, file).children ?? [];
  expect(script?.value?.match(/scenes\/values\/\w+/g)).toEqual([
    'scenes/values/fastening',
    'scenes/values/life',
  ]);
});

test('a chart names its quantity in the middle of words', () => {
  expect(familiesIn('{"chart":"relativeLife over spacer"}')).toEqual(['life']);
  expect(familiesIn('bearing, engagement and tilt in prose')).toEqual([]);
});
