import { expect, test } from 'vitest';
import { tables } from '../../../../src/lib/lesson/markdown/tables.ts';
import { html } from '../../../../src/lib/lesson/markdown/tree.ts';

test('a table scrolls in a room of its own, and what stands around it stays', () => {
  const before = { type: 'paragraph', value: 'before' };
  const table = { type: 'table', children: [] };
  const tree = { type: 'root', children: [before, table] };
  expect(tables()(tree)).toEqual({
    type: 'root',
    children: [before, html('<div class="scrolls">'), table, html('</div>')],
  });
});
