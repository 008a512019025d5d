import { describe, expect, test } from 'vitest';
import { steps } from '../../../../src/lib/lesson/markdown/steps.ts';
import { html, type TreeFile, type TreeNode } from '../../../../src/lib/lesson/markdown/tree.ts';

const heading = (value: string, depth = 2): TreeNode => ({
  type: 'heading',
  depth,
  children: [{ type: 'text', value }],
});
const paragraph = (value: string): TreeNode => ({
  type: 'paragraph',
  children: [{ type: 'text', value }],
});

function made(...children: TreeNode[]) {
  const file: TreeFile = { data: { fm: { title: 'Two points' } }, filename: 'lessons/x.md' };
  const tree = steps()({ type: 'root', children }, file);
  return { children: tree.children, metadata: file.data.fm };
}

describe('a lesson', () => {
  test('is cut into steps at its second-level headings', () => {
    const { children } = made(
      heading('One'),
      paragraph('a'),
      heading('Within', 3),
      heading('Two'),
      paragraph('b'),
    );
    expect(children).toEqual([
      html('<Step number={1} title="One">'),
      paragraph('a'),
      heading('Within', 3),
      html('</Step>'),
      html('<Step number={2} title="Two">'),
      paragraph('b'),
      html('</Step>'),
    ]);
  });

  test('tells its steps and what the figure shows in them beside its front matter', () => {
    const { metadata, children } = made(
      heading('One'),
      html('<Look views="front side" at="road" />'),
      heading('Two'),
    );
    expect(metadata).toEqual({
      title: 'Two points',
      steps: [
        { title: 'One', look: { views: 'front side', at: 'road' } },
        { title: 'Two', look: {} },
      ],
    });
    expect(JSON.stringify(children)).not.toContain('Look');
  });

  test('keeps what stands before its first step, and may have no step', () => {
    expect(made(paragraph('a'), heading('One')).children?.[0]).toEqual(paragraph('a'));
    expect(made(paragraph('a'))).toMatchObject({
      children: [paragraph('a')],
      metadata: { steps: [] },
    });
  });

  test('can have quotes in the heading of a step', () => {
    const [open] = made(heading('The "king pin"')).children ?? [];
    expect(open?.value).toBe('<Step number={1} title="The \\"king pin\\"">');
  });

  test('does not build with a look before its first step', () => {
    expect(() => made(html('<Look views="front" />'), heading('One'))).toThrow('lessons/x.md');
  });
});
