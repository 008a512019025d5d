/** As much of a Markdown syntax tree as our steps need; mdsvex brings its own remark with its own types. */
export interface TreeNode {
  type: string;
  value?: string;
  depth?: number;
  children?: TreeNode[];
}

export interface TreeFile {
  readonly data: { fm?: Record<string, unknown> };
  readonly filename?: string;
}

export const html = (value: string): TreeNode => ({ type: 'html', value });

/** The words of a node, without its markup. */
export const wordsOf = ({ value, children }: TreeNode): string =>
  value ?? (children ?? []).map(wordsOf).join('');

/** Visits every node; what the visitor returns takes the node's place. */
export function replaced(node: TreeNode, visit: (node: TreeNode) => TreeNode): TreeNode {
  const next = visit(node);
  if (next.children) next.children = next.children.map((child) => replaced(child, visit));
  return next;
}

/** Attributes of a component tag, `<Look views="front" at="road" />`, as written. */
export function attributesOf(tag: string): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [, name = '', value = ''] of tag.matchAll(/([a-zA-Z]+)="([^"]*)"/g)) {
    attributes[name] = value;
  }
  return attributes;
}
