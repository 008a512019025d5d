import { familyOf, type FamilyName } from '#scenes/values/families.ts';
import { html, type TreeFile, type TreeNode } from './tree.ts';

/** What a lesson may embed. Authors write `<Value of="scrubRadius" />` and import nothing. */
export const KIT = [
  'Step',
  'Value',
  'Reading',
  'Predict',
  'Explain',
  'Caution',
  'Example',
  'Term',
  'Typical',
  'Usual',
  'Measured',
  'TyreSize',
] as const;

/** Imports the parts of the lesson kit that a lesson uses, and the arithmetic of the quantities that it names. */
export const kitImports =
  () =>
  (tree: TreeNode, file?: TreeFile): TreeNode => {
    const text = JSON.stringify(tree);
    // What the figure shows has left the text: the steps have it.
    const looks = JSON.stringify(file?.data.fm?.['steps'] ?? []);
    const imports = [
      ...kitIn(text),
      ...familiesIn(text + looks).map((name) => `import '#scenes/values/${name}.ts';`),
    ];
    return {
      ...tree,
      children: [html(`<script>\n${imports.join('\n')}\n</script>`), ...(tree.children ?? [])],
    };
  };

const kitIn = (text: string): readonly string[] =>
  KIT.filter((name) => new RegExp(`<${name}\\b`).test(text)).map(
    (name) => `import ${name} from '$lib/lesson/kit/${name}.svelte';`,
  );

/** The families of all quantities that stand in quotes: as the attribute of a tag, one or several of them. */
export function familiesIn(text: string): readonly FamilyName[] {
  const quoted = [...text.matchAll(/"([\w ]+?)\\?"/g)].flatMap(([, words = '']) =>
    words.split(' '),
  );
  return [...new Set(quoted.map(familyOf))].filter((name) => name !== undefined).sort();
}
