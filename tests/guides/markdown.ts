import { readFileSync } from 'node:fs';

const PROJECT = new URL('../../', import.meta.url);

/** A row of a table: what stands under each of its headings. */
export type Row = Readonly<Record<string, string>>;

/** A guide's text, from its name in the project's folder. */
export const guide = (name: string): string => readFileSync(new URL(name, PROJECT), 'utf8');

/** The text from a heading to the next one of the same level or a higher one. */
export function chapter(text: string, heading: string): string {
  const start = text.indexOf(`\n${heading}\n`);
  if (start < 0) throw new Error(`there is no heading ${heading}`);
  const body = text.slice(start + heading.length + 2);
  const end = body.search(new RegExp(`^#{1,${heading.indexOf(' ')}} `, 'm'));
  return end < 0 ? body : body.slice(0, end);
}

/** The contents of the fenced blocks in one language. */
export const blocks = (text: string, language: string): readonly string[] =>
  [...text.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gm)].flatMap(([, name, body = '']) =>
    name === language ? [body] : [],
  );

/** What stands between backticks, outside of fenced blocks. */
export const codeWords = (text: string): readonly string[] =>
  [...withoutBlocks(text).matchAll(/`([^`\n]+)`/g)].flatMap(([, word]) => word ?? []);

/** The rows of all tables that have these headings and no others. */
export function tableRows(text: string, headings: readonly string[]): readonly Row[] {
  const tables = withoutBlocks(text).match(/(?:^\|.*\n)+/gm) ?? [];
  return tables.flatMap((table) => {
    const [head = [], , ...rows] = table.trim().split('\n').map(cells);
    if (head.join() !== headings.join()) return [];
    return rows.map((row) => Object.fromEntries(head.map((name, i) => [name, row[i] ?? ''])));
  });
}

/** A heading as addresses have it: `## The corner document` is at `#the-corner-document`. */
export const anchorOf = (heading: string): string =>
  heading
    .replace(/^#+ /, '')
    .toLowerCase()
    .replace(/[^\w\- ]/g, '')
    .replaceAll(' ', '-');

const withoutBlocks = (text: string): string => text.replace(/^```[\s\S]*?^```$/gm, '');

const cells = (line: string): readonly string[] =>
  line
    .split('|')
    .slice(1, -1)
    .map((cell) => cell.trim());
