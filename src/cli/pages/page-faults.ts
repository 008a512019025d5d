import { piecesOf, wordsFrom, type Piece } from './html.ts';

/** What is wrong with a page by itself, one line for each fault. */
export function pageFaults(html: string): readonly string[] {
  const pieces = piecesOf(html);
  return [
    ...headFaults(pieces),
    ...headingFaults(pieces),
    ...formulaFaults(pieces),
    ...pictureFaults(pieces),
  ];
}

const placesOf = (pieces: readonly Piece[], ...names: readonly string[]): readonly number[] =>
  pieces.flatMap((piece, i) => (piece.kind === 'open' && names.includes(piece.name) ? [i] : []));

const attribute = (piece: Piece | undefined, name: string): string | undefined =>
  piece?.kind === 'open' ? piece.attributes[name] : undefined;

function headFaults(pieces: readonly Piece[]): readonly string[] {
  const titles = placesOf(pieces, 'title').filter((i) => !isWithin(pieces, i, 'svg'));
  const title = titles.map((i) => wordsFrom(pieces, i)).join('');
  const description = placesOf(pieces, 'meta')
    .map((i) => pieces[i])
    .find((meta) => attribute(meta, 'name') === 'description');
  return [
    ...(titles.length === 1 && title !== '' ? [] : [`has ${titles.length} titles: “${title}”`]),
    ...((attribute(description, 'content') ?? '').length > 20 ? [] : ['has no description']),
  ];
}

function headingFaults(pieces: readonly Piece[]): readonly string[] {
  const headings = placesOf(pieces, 'h1', 'h2', 'h3', 'h4', 'h5', 'h6').map((i) => {
    const piece = pieces[i];
    const level = piece?.kind === 'open' ? Number(piece.name.slice(1)) : NaN;
    return { level, words: wordsFrom(pieces, i) };
  });
  const first = headings.filter(({ level }) => level === 1).length;
  return [
    ...(first === 1 ? [] : [`has ${first} headings of the first level`]),
    ...headings.flatMap(({ level, words }, i) => {
      if (words === '') return [`has an empty heading of level ${level}`];
      const before = headings[i - 1]?.level ?? 0;
      return level > before + 1 ? [`jumps from level ${before} to ${level} at “${words}”`] : [];
    }),
  ];
}

/** Signs of TeX that nobody has set. */
const UNSET = /\$|\\(?:frac|tan|sin|cos|sigma|tau|gamma|delta|text|mathbf|approx|cdot|times)\b/;

function formulaFaults(pieces: readonly Piece[]): readonly string[] {
  const [body] = placesOf(pieces, 'body');
  // The TeX of a formula goes along with it, for whoever copies it.
  const words = wordsFrom(pieces, body ?? -1, ['annotation', 'script', 'style']);
  const at = words.search(UNSET);
  return at < 0
    ? []
    : [`has a formula that is not set: “${words.slice(Math.max(0, at - 20), at + 40)}”`];
}

function pictureFaults(pieces: readonly Piece[]): readonly string[] {
  const drawings = placesOf(pieces, 'svg').filter((i) => !isWithin(pieces, i, 'svg'));
  return [
    ...drawings.flatMap((i) => {
      if (attribute(pieces[i], 'aria-hidden') === 'true') return [];
      const within = pieces.slice(i, closeOf(pieces, i));
      const said = ['title', 'desc'].map((name) =>
        placesOf(within, name)
          .map((at) => wordsFrom(within, at))
          .join(''),
      );
      return said.every((words) => words !== '')
        ? []
        : ['has a drawing without title and description'];
    }),
    ...placesOf(pieces, 'img').flatMap((i) =>
      attribute(pieces[i], 'alt') === undefined ? ['has a picture without words for it'] : [],
    ),
    ...placesOf(pieces, 'figure').flatMap((i) => {
      const within = pieces.slice(i, closeOf(pieces, i));
      const described = placesOf(within, 'desc', 'caption').length > 0;
      return described ? [] : ['has a figure without a description'];
    }),
  ];
}

/** Where the element that opens at a place closes. */
function closeOf(pieces: readonly Piece[], start: number): number {
  const opening = pieces[start];
  let depth = 0;
  for (let i = start; i < pieces.length; i++) {
    const piece = pieces[i];
    if (piece?.kind === 'text' || opening?.kind !== 'open' || piece?.name !== opening.name)
      continue;
    depth += piece.kind === 'open' ? 1 : -1;
    if (depth === 0) return i;
  }
  return pieces.length;
}

const isWithin = (pieces: readonly Piece[], place: number, name: string): boolean => {
  const before = pieces.slice(0, place);
  const opened = placesOf(before, name).length;
  return opened > before.filter((piece) => piece.kind === 'close' && piece.name === name).length;
};
