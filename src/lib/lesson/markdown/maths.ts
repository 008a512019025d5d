import katex from 'katex';
import { html, replaced, type TreeNode } from './tree.ts';

/**
 * Sets every formula when the site is built. MathML alone: browsers set it themselves, screen readers read
 * it, and no maths script, style sheet or font reaches the reader.
 */
export const maths =
  () =>
  (tree: TreeNode): TreeNode =>
    replaced(tree, (node) => {
      if (node.type === 'inlineMath') return html(embedded(mathML(node.value ?? '', false)));
      if (node.type === 'math') {
        return html(`<div class="formula">${embedded(mathML(node.value ?? '', true))}</div>`);
      }
      return node;
    });

/** TeX as MathML, with the TeX kept as an annotation for whoever copies it. Throws on TeX that KaTeX cannot read. */
export function mathML(tex: string, display: boolean): string {
  const set = katex.renderToString(tex, {
    output: 'mathml',
    displayMode: display,
    throwOnError: true,
    strict: 'error',
  });
  return set
    .replace(/^<span class="katex">/, '')
    .replace(/<\/span>$/, '')
    .replace(FUNCTION, `${THIN}<mi>$1</mi><mo>\u2061</mo>${THIN}`);
}

/** A named function and the invisible sign that applies it: browsers leave no room around either. */
const FUNCTION = /<mi>([a-z]{2,})<\/mi><mo>\u2061<\/mo>/g;
const THIN = '<mspace width="0.167em"/>';

/** As a Svelte expression, since braces in TeX would be taken for one. */
const embedded = (mathml: string): string => `{@html ${JSON.stringify(mathml)}}`;
