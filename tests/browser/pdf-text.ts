import { inflateSync } from 'node:zlib';

/** From the codes of a font to letters. */
type Letters = ReadonlyMap<string, string>;

/**
 * The text of a PDF as Chromium writes it, without its spaces: enough to find numbers in. Each font of such a file
 * comes with a table from its codes to letters.
 */
export function pdfText(pdf: Buffer): string {
  const file = pdf.toString('latin1');
  const objects = new Map(
    [...file.matchAll(/^(\d+) 0 obj\s([\s\S]*?)\nendobj/gm)].map(([, id = '', body = '']) => [
      id,
      body,
    ]),
  );
  const fonts = new Map<string, Letters>();
  for (const [, name = '', id = ''] of file.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const [, table = ''] = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id) ?? '') ?? [];
    fonts.set(name, lettersOf(unpacked(objects.get(table) ?? '')));
  }
  return [...objects.values()].map((body) => shownText(unpacked(body), fonts)).join('\n');
}

/** The content of an object's stream; empty where it has none, or one that is no text. */
function unpacked(body: string): string {
  const [start, length] = /\/Filter \/FlateDecode\s+\/Length (\d+)>> stream\r?\n/.exec(body) ?? [];
  if (start === undefined) return '';
  const from = body.indexOf(start) + start.length;
  return inflateSync(Buffer.from(body.slice(from, from + Number(length)), 'latin1')).toString(
    'latin1',
  );
}

function lettersOf(table: string): Letters {
  const letters = new Map<string, string>();
  for (const [, from = '', to = from, hex = ''] of table.matchAll(
    /<(\w+)> (?:<(\w+)> )?<(\w+)>\n/g,
  )) {
    // More than one unit where letters have grown together: fi.
    const units = (hex.match(/.{4}/g) ?? []).map((unit) => parseInt(unit, 16));
    const last = units.pop() ?? 0;
    const first = parseInt(from, 16);
    for (let code = first; code <= parseInt(to, 16); code++) {
      const letter = String.fromCharCode(...units, last + code - first);
      letters.set(code.toString(16).padStart(from.length, '0'), letter);
    }
  }
  return letters;
}

function shownText(content: string, fonts: ReadonlyMap<string, Letters>): string {
  let text = '';
  let letters: Letters | undefined;
  for (const [, font, codes] of content.matchAll(/\/(F\d+) [\d.]+ Tf|<(\w+)> Tj/g)) {
    if (font !== undefined) letters = fonts.get(font);
    const size = [...(letters?.keys() ?? [])][0]?.length ?? 2;
    for (const code of codes?.toLowerCase().match(new RegExp(`.{${size}}`, 'g')) ?? [])
      text += letters?.get(code) ?? '';
  }
  return text.replaceAll(/\s/g, '');
}
