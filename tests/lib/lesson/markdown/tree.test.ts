import { describe, expect, test } from 'vitest';
import {
  attributesOf,
  html,
  replaced,
  wordsOf,
  type TreeNode,
} from '../../../../src/lib/lesson/markdown/tree.ts';

const paragraph = (...children: TreeNode[]): TreeNode => ({ type: 'paragraph', children });
const text = (value: string): TreeNode => ({ type: 'text', value });

test('the words of a node are those of everything in it', () => {
  const node = paragraph(text('At '), { type: 'strong', children: [text('the')] }, text(' road'));
  expect(wordsOf(node)).toBe('At the road');
  expect(wordsOf(paragraph())).toBe('');
});

describe('replacing', () => {
  test('reaches every depth, and leaves alone what the visitor returns as it is', () => {
    const tree = paragraph(text('a'), paragraph(text('b'), { type: 'break' }));
    const shouted = replaced(tree, (node) =>
      node.value === undefined ? node : { ...node, value: node.value.toUpperCase() },
    );
    expect(shouted).toEqual(paragraph(text('A'), paragraph(text('B'), { type: 'break' })));
  });

  test('goes on into what a node was replaced by', () => {
    const tree = paragraph(text('a'));
    const wrapped = replaced(tree, (node) => (node.value === 'a' ? paragraph(text('b')) : node));
    expect(wrapped).toEqual(paragraph(paragraph(text('b'))));
  });
});

describe('the attributes of a tag', () => {
  test.each([
    ['<Look views="front side" at="road" />', { views: 'front side', at: 'road' }],
    ['<Look\n  views="top"\n  names=""\n/>', { views: 'top', names: '' }],
    ['<Value of="camber" change />', { of: 'camber' }],
    ['<Look />', {}],
  ])('of %s', (tag, expected) => {
    expect(attributesOf(tag)).toEqual(expected);
  });
});

test('raw markup is a node of its own', () => {
  expect(html('<b>')).toEqual({ type: 'html', value: '<b>' });
});
