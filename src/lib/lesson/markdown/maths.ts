import katex from 'katex';
import { html, replaced, type TreeNode } from './tree.ts';

/**
 * Sets every formula when the site is built. MathML alone: browsers set it themselves, screen readers read
 * it, and neither script nor style sheet of KaTeX reaches the reader.
 */
export const maths =
  () =>
  (tree: TreeNode): TreeNode =>
    replaced(tree, (node) => {
      if (node.type === 'math') {
        return html(`<div class="formula">${embedded(mathML(node.value ?? '', true))}</div>`);
      }
      return node.children ? { ...node, children: inLine(node.children) } : node;
    });

/** Formulas within a line. A browser would break the line between one and the sign that follows it. */
function inLine(nodes: readonly TreeNode[]): TreeNode[] {
  const signs = nodes.map((node, i) =>
    node.type === 'text' && nodes[i - 1]?.type === 'inlineMath'
      ? (/^[,.;:!?)]+/.exec(node.value ?? '')?.[0] ?? '')
      : '',
  );
  return nodes.map((node, i) => {
    const own = signs[i] ?? '';
    if (own !== '') return { ...node, value: node.value?.slice(own.length) ?? '' };
    if (node.type !== 'inlineMath') return node;
    const set = embedded(mathML(node.value ?? '', false));
    const next = signs[i + 1] ?? '';
    return html(next === '' ? set : `<span class="unbroken">${set}${next}</span>`);
  });
}

/** TeX as MathML, with the TeX kept as an annotation for whoever copies it. Throws on TeX that KaTeX cannot read. */
export function mathML(tex: string, display: boolean): string {
  const set = katex.renderToString(tex, {
    output: 'mathml',
    displayMode: display,
    throwOnError: true,
    strict: 'error',
  });
  return (
    set
      .replace(/^<span class="katex">/, '')
      .replace(/<\/span>$/, '')
      // In a page of HTML the name of the element says it.
      .replace(' xmlns="http://www.w3.org/1998/Math/MathML"', '')
      .replace(FUNCTION, `${THIN}<mi>$1</mi><mo>\u2061</mo>${THIN}`)
      .replace(NAME, '<mi mathvariant="normal">$1</mi>')
  );
}

/** A named function and the invisible sign that applies it: browsers leave no room around either. */
const FUNCTION = /<mi>([a-z]{2,})<\/mi><mo>\u2061<\/mo>/g;
/** What is upright by having more than one letter: a style sheet cannot count them. */
const NAME = /<mi>(\p{L}{2,})<\/mi>/gu;
const THIN = '<mspace width="0.167em"/>';

/** As a Svelte expression, since braces in TeX would be taken for one. */
const embedded = (mathml: string): string => `{@html ${JSON.stringify(mathml)}}`;
