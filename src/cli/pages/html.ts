/** A piece of a page: a tag that opens or closes, or text between tags. */
export type Piece =
  | {
      readonly kind: 'open';
      readonly name: string;
      readonly attributes: Readonly<Record<string, string>>;
    }
  | { readonly kind: 'close'; readonly name: string }
  | { readonly kind: 'text'; readonly text: string };

const PIECE =
  /<!--[\s\S]*?-->|<!doctype[^>]*>|<\/(?<closed>[a-z][\w-]*)\s*>|<(?<opened>[a-z][\w-]*)(?<written>(?:"[^"]*"|'[^']*'|[^"'>])*)>|(?<text>[^<]+)/gi;
const ATTRIBUTE = /([^\s=/"'>]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;

/** Whose content is no markup. */
const RAW = ['script', 'style'];

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
};

/** A page in pieces, as our build writes it: well-formed, and read without mending anything. */
export function piecesOf(html: string): readonly Piece[] {
  const pieces: Piece[] = [];
  let raw: string | undefined;
  for (const { groups = {} } of html.matchAll(PIECE)) {
    const { closed, opened, written = '', text } = groups;
    if (raw !== undefined) {
      if (closed?.toLowerCase() !== raw) continue;
      raw = undefined;
    }
    if (closed !== undefined) pieces.push({ kind: 'close', name: closed.toLowerCase() });
    else if (opened !== undefined) {
      const name = opened.toLowerCase();
      pieces.push({ kind: 'open', name, attributes: attributesOf(written) });
      if (RAW.includes(name)) raw = name;
      else if (written.endsWith('/')) pieces.push({ kind: 'close', name });
    } else if (text !== undefined) pieces.push({ kind: 'text', text: plain(text) });
  }
  return pieces;
}

const attributesOf = (written: string): Record<string, string> =>
  Object.fromEntries(
    [...written.matchAll(ATTRIBUTE)].map(([, name = '', double, single, bare]) => [
      name.toLowerCase(),
      plain(double ?? single ?? bare ?? ''),
    ]),
  );

const plain = (text: string): string =>
  text
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll(/&([a-z]+);/g, (all, name: string) => ENTITIES[name] ?? all);

/** The words from an opening tag to where it closes, without those of the elements that are left out. */
export function wordsFrom(
  pieces: readonly Piece[],
  start: number,
  leftOut: readonly string[] = [],
): string {
  const opening = pieces[start];
  if (opening?.kind !== 'open') return '';
  let depth = 0;
  let within: string | undefined;
  let words = '';
  for (const piece of pieces.slice(start)) {
    if (piece.kind === 'text') words += within === undefined ? piece.text : '';
    else if (piece.kind === 'open') {
      if (piece.name === opening.name) depth += 1;
      if (leftOut.includes(piece.name)) within ??= piece.name;
    } else {
      if (piece.name === within) within = undefined;
      if (piece.name === opening.name) depth -= 1;
      if (depth === 0) break;
    }
  }
  return words.replaceAll(/\s+/g, ' ').trim();
}
