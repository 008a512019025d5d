import { posix } from 'node:path';
import { piecesOf } from './html.ts';

/** A page of the built site, by its file, with what leads to it and from it. */
export interface LinkedPage {
  readonly file: string;
  /** Names that a fragment may lead to. */
  readonly ids: ReadonlySet<string>;
  /** Addresses of links, pictures and scripts, as written. */
  readonly addresses: readonly string[];
}

export function linkedPage(file: string, html: string): LinkedPage {
  const ids = new Set<string>();
  const addresses: string[] = [];
  for (const piece of piecesOf(html)) {
    if (piece.kind !== 'open') continue;
    const { id, href, src } = piece.attributes;
    if (id !== undefined) ids.add(id);
    for (const address of [href, src]) if (address !== undefined) addresses.push(address);
  }
  return { file, ids, addresses };
}

/**
 * Links that lead nowhere within the site, one line each.
 *
 * @param pages all pages
 * @param files every file of the site, from its folder
 */
export function linkFaults(
  pages: readonly LinkedPage[],
  files: ReadonlySet<string>,
): readonly string[] {
  const byFile = new Map(pages.map((page) => [page.file, page]));
  return pages.flatMap(({ file, addresses }) =>
    [...new Set(addresses)].flatMap((address) => {
      if (/^(?:[a-z]+:|\/\/)/i.test(address)) return [];
      const { pathname, hash } = new URL(
        address,
        `http://site/${file.replace(/index\.html$/, '')}`,
      );
      const path = decodeURIComponent(pathname).slice(1);
      const target = [path, posix.join(path, 'index.html')].find((one) => files.has(one));
      if (target === undefined) return [`${file}: “${address}” leads to no page`];
      const page = byFile.get(target);
      const name = decodeURIComponent(hash.slice(1));
      return name === '' || !page || page.ids.has(name)
        ? []
        : [`${file}: “${address}” leads to no place of its page`];
    }),
  );
}
