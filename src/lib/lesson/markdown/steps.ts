import { attributesOf, html, wordsOf, type TreeFile, type TreeNode } from './tree.ts';

/** A step as it stands in the Markdown: its heading, and the attributes of its `<Look />` tag. */
export interface WrittenStep {
  readonly title: string;
  readonly look: Readonly<Record<string, string>>;
  /** Terms of the glossary that are linked in it, where there are any. */
  readonly terms?: readonly string[];
}

/**
 * Makes steps of a lesson: every second-level heading begins one. A `<Look … />` in it says what the figure
 * shows there; it leaves the text and goes into the lesson's metadata, so that the figure knows it before any
 * step is drawn. A derivation is read in one piece: its headings stay headings.
 */
export const steps =
  () =>
  (tree: TreeNode, file: TreeFile): TreeNode => {
    if (DERIVATION.test(file.filename ?? '')) return tree;
    const children: TreeNode[] = [];
    const written: { title: string; look: Record<string, string>; terms?: string[] }[] = [];
    let look: Record<string, string> = {};
    const close = (): void => {
      if (written.length > 0) children.push(html('</Step>'));
    };
    for (const node of tree.children ?? []) {
      const tag = (node.value ?? '').trim();
      if (node.type === 'heading' && node.depth === 2) {
        close();
        look = {};
        const title = wordsOf(node);
        written.push({ title, look });
        children.push(html(`<Step number={${written.length}} title=${JSON.stringify(title)}>`));
      } else if (tag.startsWith('<Look')) {
        if (written.length === 0)
          throw new Error(`${file.filename ?? ''}: <Look /> before the first step`);
        Object.assign(look, attributesOf(tag));
      } else {
        children.push(node);
        const step = written.at(-1);
        const terms = step ? termsIn(node) : [];
        if (step && terms.length > 0) step.terms = [...new Set([...(step.terms ?? []), ...terms])];
      }
    }
    close();
    file.data.fm = { ...file.data.fm, steps: written };
    return { ...tree, children };
  };

/** The terms that a part of the text links to. */
const termsIn = ({ value = '', children = [] }: TreeNode): string[] => [
  ...[...value.matchAll(/<Term of="([a-z-]+)"/g)].map(([, id = '']) => id),
  ...children.flatMap(termsIn),
];

const DERIVATION = /\bderivations[\\/][^\\/]+\.md$/;
