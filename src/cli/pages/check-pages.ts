// Looks through the site in build-static/ as a visitor would who follows every link; says what is wrong and ends
// with exit code 1 then.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { inProject } from '../project.mjs';
import { piecesOf } from './html.ts';
import { linkedPage, linkFaults } from './links.ts';
import { pageFaults } from './page-faults.ts';

/** What the scripts that a lesson first loads may weigh, compressed, in bytes. */
const MOST_SCRIPT = 90_000;

/** The page for addresses that lead nowhere is made in the browser. */
const FALLBACK = '404.html';

const folder = inProject('build-static');
const files = readdirSync(folder, { recursive: true })
  .map((name) => String(name).replaceAll('\\', '/'))
  .filter((name) => statSync(join(folder, name)).isFile());
const pages = files
  .filter((name) => name.endsWith('.html') && name !== FALLBACK)
  .map((file) => ({ file, html: readFileSync(join(folder, file), 'utf8') }));

const faults = [
  ...pages.flatMap(({ file, html }) => pageFaults(html).map((fault) => `${file}: ${fault}`)),
  ...linkFaults(
    pages.map(({ file, html }) => linkedPage(file, html)),
    new Set(files),
  ),
  ...pages.filter(({ file }) => /^lessons\/.+\//.test(file)).flatMap(weightFaults),
  ...(pages.length > 20 ? [] : [`there are only ${pages.length} pages`]),
];
for (const fault of faults) console.error(fault);
console.log(`${pages.length} pages looked through, ${faults.length} faults.`);
if (faults.length > 0) process.exitCode = 1;

/** Whether the scripts that a page asks for at once are too heavy. */
function weightFaults({ file, html }: { readonly file: string; readonly html: string }): string[] {
  const scripts = piecesOf(html).flatMap((piece) =>
    piece.kind === 'open' && piece.attributes['rel'] === 'modulepreload'
      ? [piece.attributes['href'] ?? '']
      : [],
  );
  const base = new URL(file.replace(/index\.html$/, ''), 'http://site/');
  const weight = [...new Set(scripts)]
    .map((href) => new URL(href, base).pathname)
    .map((path) => brotliCompressSync(readFileSync(join(folder, path))).length)
    .reduce((sum, size) => sum + size, 0);
  if (weight === 0) return [`${file}: asks for no script at once`];
  return weight > MOST_SCRIPT
    ? [`${file}: ${weight} bytes of script, ${MOST_SCRIPT} are allowed`]
    : [];
}
