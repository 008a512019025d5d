import { KIT } from '../../src/lib/lesson/markdown/kit-imports.ts';
import { blanked, FRONT_MATTER, lineAt, type LessonFile } from './lesson-files.ts';

/** Formulas, displayed and in the line. */
const MATHS = [/\$\$[\s\S]+?\$\$/g, /\$[^$\n]+\$/g];

/** Where the addresses of links stand. */
const ADDRESSES = [/\]\([^)]*\)/g, /https?:\/\/\S+/g];

const TAG = new RegExp(`</?(?:${[...KIT, 'Look'].join('|')})\\b[^<>]*>`, 'g');

/** Numbers that are names: standards, tyre sizes, threads; and the markers of numbered lists. */
const NAMES = [
  /\b(?:ISO|IEC|DIN|EN|SAE|ECE|UN|ASTM)(?: [A-Z]+)?[ /-]?[A-Z]?\d[\d.]*(?:[-:]\d+)*/g,
  /\b\d{3}\/\d{2} ?Z?R ?\d{2}C?(?: \d{2,3}(?:\/\d{2,3})?[A-Z])?/g,
  /\bM\d{1,2}\b/g,
  /^ *\d+\. /gm,
];

const COUNTS =
  'half|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|' +
  'seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|million';

const UNITS =
  '(?:milli|centi|kilo)?met(?:re|er)s?|inch(?:es)?|feet|foot|miles?|degrees?|minutes? of arc|radians?|' +
  '(?:kilo)?newtons?(?: met(?:re|er)s?)?|(?:kilo)?grams?|pounds?|tonnes?|bar|per ?cent|kilometres? an hour|' +
  'times (?:as|the|what|that)';

/** Numbers in figures, and numbers in words before a unit: `twenty millimetres`, `half a degree`. */
const NUMBERS = [
  /\d+(?:[.,]\d+)*|[¼½¾]/g,
  new RegExp(`\\b(?:${COUNTS})(?:[ -](?:and|an?|of|${COUNTS}))*[ -](?:${UNITS})\\b`, 'gi'),
];

/** What Svelte would take for its own, and what no browser knows. */
const MARKUP = [/<\/?[A-Za-z][^\s>]*|</g, /[{}]|&#\d+;/g];

/**
 * What is wrong with the prose of a lesson, one line for each fault, with file and line: numbers that stand in
 * it instead of being computed, and signs that the build would take for something else.
 */
export function proseFaults({ path, text }: LessonFile): readonly string[] {
  const prose = blanked(text, FRONT_MATTER, ...MATHS, ...ADDRESSES, TAG);
  const found = (patterns: readonly RegExp[], within: string, why: string): readonly Fault[] =>
    patterns.flatMap((pattern) =>
      Array.from(within.matchAll(pattern), ({ 0: what, index }) => ({ index, what, why })),
    );
  return [
    ...found(
      NUMBERS,
      blanked(prose, ...NAMES),
      'is a bare number: let a <Value /> compute it, so that it cannot go stale',
    ),
    ...found(
      MARKUP,
      prose,
      'is taken for markup: put it into a formula, or use a part of the lesson kit',
    ),
  ]
    .sort((a, b) => a.index - b.index)
    .map(({ index, what, why }) => `${path}:${lineAt(text, index)}: “${what}” ${why}`);
}

interface Fault {
  readonly index: number;
  readonly what: string;
  readonly why: string;
}
