import { html, type TreeNode } from './tree.ts';

/** Gives every table room of its own to scroll in, so that on a narrow screen the page itself never goes sideways. */
export const tables =
  () =>
  (tree: TreeNode): TreeNode => ({
    ...tree,
    children: (tree.children ?? []).flatMap((node) =>
      node.type === 'table' ? [html('<div class="scrolls">'), node, html('</div>')] : [node],
    ),
  });
