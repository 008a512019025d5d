import { describe, expect, test } from 'vitest';
import { mathML, maths } from '../../../../src/lib/lesson/markdown/maths.ts';

describe('a formula', () => {
  test('becomes MathML and nothing else, and keeps its TeX for whoever copies it', () => {
    const set = mathML('r = q - R\\tan\\sigma', false);
    expect(set).toMatch(/^<math[\s>].*<\/math>$/s);
    expect(set).toContain(
      '<annotation encoding="application/x-tex">r = q - R\\tan\\sigma</annotation>',
    );
    expect(set).not.toMatch(/style=|class=/);
  });

  test('is displayed or stands in the line', () => {
    expect(mathML('r', true)).toContain('display="block"');
    expect(mathML('r', false)).not.toContain('display="block"');
  });

  test('that cannot be read does not build', () => {
    expect(() => mathML('\\frac{1}', false)).toThrow();
    expect(() => mathML('\\nosuchthing', false)).toThrow();
    expect(() => mathML('ü', false)).toThrow();
  });
});

describe('the formulas of a lesson', () => {
  const tree = maths()({
    type: 'root',
    children: [
      { type: 'paragraph', children: [{ type: 'inlineMath', value: 'r_{1} < q' }] },
      { type: 'math', value: 'q' },
      { type: 'text', value: 'r' },
    ],
  });

  test('are hidden from Svelte, whose braces and tags they would be', () => {
    const [paragraph, displayed] = tree.children ?? [];
    const inline = paragraph?.children?.[0];
    expect(inline?.type).toBe('html');
    expect(inline?.value).toMatch(/^\{@html ".*"\}$/s);
    expect(JSON.parse(inline?.value?.slice(7, -1) ?? '')).toBe(mathML('r_{1} < q', false));
    expect(displayed?.value).toMatch(/^<div class="formula">\{@html ".*"\}<\/div>$/s);
  });

  test('keep the comma that follows them on their line', () => {
    const [line] =
      maths()({
        type: 'root',
        children: [
          {
            type: 'paragraph',
            children: [
              { type: 'inlineMath', value: 'h' },
              { type: 'text', value: ', the height, and' },
              { type: 'inlineMath', value: 'r' },
              { type: 'text', value: ' too' },
            ],
          },
        ],
      }).children ?? [];
    const values = line?.children?.map(({ value }) => value);
    expect(values).toEqual([
      expect.stringMatching(/^<span class="unbroken">\{@html ".*"\},<\/span>$/s),
      ' the height, and',
      expect.stringMatching(/^\{@html ".*"\}$/s),
      ' too',
    ]);
  });

  test('leave the rest as it is', () => {
    expect(tree.children?.[2]).toEqual({ type: 'text', value: 'r' });
  });
});
