import { preProcessFile } from 'typescript';

/**
 * What a source file imports, as written: `./a.ts`, `#core/b.ts`, `d3-shape`. Takes in type-only,
 * dynamic and re-exporting imports and the patterns of `import.meta.glob`. In Svelte and Markdown
 * files only the scripts count.
 */
export function importsOf(path: string, text: string): readonly string[] {
  const code = /\.(svelte|md)$/.test(path) ? scriptsOf(text) : text;
  const { importedFiles } = preProcessFile(code, true, true);
  return [...importedFiles.map(({ fileName }) => fileName), ...globsOf(code)];
}

const scriptsOf = (text: string): string =>
  [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code).join('\n');

const globsOf = (code: string): readonly string[] =>
  [...code.matchAll(/import\.meta\.glob[^(]*\(([\s\S]*?)\)/g)].flatMap(([, words = '']) =>
    [...words.matchAll(/['"`]([./$#][^'"`]*)['"`]/g)].flatMap(([, pattern]) => pattern ?? []),
  );
