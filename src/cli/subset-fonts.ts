// npm run fonts: cuts the typefaces down to what the site sets, writes them with their style sheet and
// licences into src/lib/ui/fonts/, and prints their sizes.
//
// The families get names of our own, since one licence reserves its name for the unchanged font.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import subsetFont from 'subset-font';
import { inProject } from './project.mjs';

interface Face {
  /** The file's name, without ending. */
  readonly file: string;
  readonly family: 'Knucklebook Text' | 'Knucklebook Figures' | 'Knucklebook Maths';
  readonly style: 'normal' | 'italic';
  readonly source: string;
  readonly characters: string;
  /** Nothing for a typeface of one weight. */
  readonly weights?: number | { readonly min: number; readonly max: number };
}

const SERIF = '@fontsource-variable/source-serif-4';
const SANS = '@fontsource-variable/atkinson-hyperlegible-next';
const MATHS = '@fontsource/stix-two-math';

const BASIC_LATIN = charactersBetween(0x20, 0x7e);
/** Letters of names: a file of its own, which comes only to whoever has such a name on the page. */
const ACCENTS = charactersBetween(0xc0, 0xff).replace(/[×÷]/g, '');
const PUNCTUATION = '\u00a0–—‘’“”…';
const SIGNS = '§°±²³·¼½¾−•×÷';
/** Signs that the interface face lacks. */
const TEXT_SIGNS = 'µ′″↑↓';
const GREEK = 'αβγδεηθλμνπρστφψωΔΣΩ';
/** What grows with what it holds. The space makes the browser take its measures from this face. */
const STRETCHED = ' √{()∑';

// → ← ≈ ≤ and ≥ are in none of the typefaces; the reader's own fonts supply them.
const FACES: readonly Face[] = [
  {
    file: 'text',
    family: 'Knucklebook Text',
    style: 'normal',
    source: `${SERIF}/files/source-serif-4-latin-wght-normal.woff2`,
    characters: BASIC_LATIN + PUNCTUATION + SIGNS + TEXT_SIGNS,
    weights: { min: 400, max: 700 },
  },
  {
    file: 'text-accents',
    family: 'Knucklebook Text',
    style: 'normal',
    source: `${SERIF}/files/source-serif-4-latin-wght-normal.woff2`,
    characters: ACCENTS,
    weights: { min: 400, max: 700 },
  },
  {
    file: 'text-italic',
    family: 'Knucklebook Text',
    style: 'italic',
    source: `${SERIF}/files/source-serif-4-latin-wght-italic.woff2`,
    characters: BASIC_LATIN + PUNCTUATION,
    weights: 400,
  },
  {
    file: 'text-greek',
    family: 'Knucklebook Text',
    style: 'normal',
    source: `${SERIF}/files/source-serif-4-greek-wght-normal.woff2`,
    characters: GREEK,
    weights: { min: 400, max: 700 },
  },
  {
    file: 'figures',
    family: 'Knucklebook Figures',
    style: 'normal',
    source: `${SANS}/files/atkinson-hyperlegible-next-latin-wght-normal.woff2`,
    characters: BASIC_LATIN + PUNCTUATION + SIGNS,
    weights: { min: 400, max: 700 },
  },
  {
    file: 'figures-accents',
    family: 'Knucklebook Figures',
    style: 'normal',
    source: `${SANS}/files/atkinson-hyperlegible-next-latin-wght-normal.woff2`,
    characters: ACCENTS,
    weights: { min: 400, max: 700 },
  },
  {
    file: 'maths',
    family: 'Knucklebook Maths',
    style: 'normal',
    source: `${MATHS}/files/stix-two-math-latin-400-normal.woff2`,
    characters: STRETCHED,
  },
];

/** Kerning, ligatures, and both kinds of figures: of even width in tables, of their own width in prose. */
const FEATURES = ['kern', 'liga', 'pnum', 'tnum'];

/** Of those that a lesson may set, in bytes: all but the letters of names. */
const BUDGET = 60_000;

const LICENCES = [
  {
    file: 'LICENCE-text.txt',
    source: `${SERIF}/LICENSE`,
    // The package's copy leaves out the line that the font itself carries.
    notice:
      'Copyright 2014-2021 Adobe Systems Incorporated (http://www.adobe.com/), with Reserved Font Name ‘Source’.\n\n',
  },
  { file: 'LICENCE-figures.txt', source: `${SANS}/LICENSE`, notice: '' },
  { file: 'LICENCE-maths.txt', source: `${MATHS}/LICENSE`, notice: '' },
];

const folder = inProject('src/lib/ui/fonts');
mkdirSync(folder, { recursive: true });

let total = 0;
for (const face of FACES) {
  const font = await subsetFont(readFileSync(packaged(face.source)), face.characters, {
    targetFormat: 'woff2',
    ...(face.weights !== undefined && { variationAxes: { wght: face.weights } }),
    keepFeatures: FEATURES,
    // For the screens of long ago; they are half of what the face for maths weighs.
    noHinting: true,
  });
  writeFileSync(`${folder}/${face.file}.woff2`, font);
  if (face.characters !== ACCENTS) total += font.length;
  console.log(`${face.file.padEnd(16)} ${String(font.length).padStart(6)} bytes`);
}
console.log(`${'together'.padEnd(16)} ${String(total).padStart(6)} bytes of ${BUDGET} allowed`);
if (total > BUDGET) process.exitCode = 1;

writeFileSync(
  `${folder}/fonts.css`,
  `/* Written by npm run fonts. */\n\n${FACES.map(fontFace).join('\n')}`,
);
for (const { file, source, notice } of LICENCES)
  writeFileSync(`${folder}/${file}`, notice + readFileSync(packaged(source), 'utf8'));

function packaged(path: string): string {
  return inProject('node_modules', path);
}

function charactersBetween(first: number, last: number): string {
  return String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, i) => first + i));
}

/** Prose keeps the face it began with, so that no line moves; a formula hardly does when its brackets come late. */
function fontFace({ file, family, style, weights = 400, characters }: Face): string {
  const weight = typeof weights === 'number' ? weights : `${weights.min} ${weights.max}`;
  return `@font-face {
  font-family: '${family}';
  font-style: ${style};
  font-weight: ${weight};
  font-display: ${family === 'Knucklebook Maths' ? 'swap' : 'optional'};
  src: url('./${file}.woff2') format('woff2');
  unicode-range: ${unicodeRange(characters)};
}
`;
}

/** The characters as CSS writes them: `U+20-7E, U+A0`. */
function unicodeRange(characters: string): string {
  const codes = Array.from(characters, (character) => character.codePointAt(0) ?? 0);
  const runs: [first: number, last: number][] = [];
  for (const code of codes.sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.[1] === code - 1) run[1] = code;
    else runs.push([code, code]);
  }
  const hex = (code: number) => code.toString(16).toUpperCase();
  return runs
    .map(([first, last]) => (first === last ? `U+${hex(first)}` : `U+${hex(first)}-${hex(last)}`))
    .join(', ');
}
