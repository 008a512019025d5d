/** Where a text stops being JSON. */
export interface JsonMistake {
  /** Both count from 1. */
  readonly line: number;
  readonly column: number;
  /** What stands there: a character or a word, or `the end`. */
  readonly found: string;
  /** What JSON allows there. */
  readonly allowed: string;
}

/** What may come next. The words are those of the message. */
type Expected = keyof typeof WORDS;

/** The mark that opened a list or an object. */
type Opening = '[' | '{';

const WORDS = {
  value: 'a value',
  'value or ]': 'a value or ]',
  key: 'a key in double quotes',
  'key or }': 'a key in double quotes or }',
  ':': 'a colon',
  'rest of list': 'a comma or ]',
  'rest of object': 'a comma or }',
  end: 'nothing more',
} as const;

const SPACE = /[ \t\n\r]*/y;

/** One token of JSON: a mark, a text without raw control characters, a number or a word. */
const TOKEN =
  /[{}[\],:]|"[ !#-[\]-\uFFFF]*(?:\\(?:["\\/bfnrt]|u[0-9A-Fa-f]{4})[ !#-[\]-\uFFFF]*)*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/y;

/**
 * Finds the first mistake in a text that JSON.parse has refused, which alone does not always say where.
 *
 * @returns undefined for a text that is JSON
 *
 * Source: RFC 8259 (from memory).
 */
export function jsonMistake(text: string): JsonMistake | undefined {
  const open: Opening[] = [];
  let expected: Expected = 'value';
  let offset = 0;
  for (;;) {
    offset += lengthAt(SPACE, text, offset);
    if (offset >= text.length && expected === 'end') return undefined;
    const size = lengthAt(TOKEN, text, offset);
    const next: Expected | undefined =
      size === 0 ? undefined : after(text.charAt(offset), expected, open);
    if (next === undefined) return mistakeAt(text, offset, expected);
    expected = next;
    offset += size;
  }
}

/** What may follow a token that starts with this character; undefined where it must not stand. Keeps `open` up to date. */
function after(start: string, expected: Expected, open: Opening[]): Expected | undefined {
  switch (expected) {
    case 'end':
      return undefined;
    case ':':
      return start === ':' ? 'value' : undefined;
    case 'key':
      return start === '"' ? ':' : undefined;
    case 'key or }':
      return start === '}' ? closed(open) : after(start, 'key', open);
    case 'rest of object':
      if (start === ',') return 'key';
      return start === '}' ? closed(open) : undefined;
    case 'rest of list':
      if (start === ',') return 'value';
      return start === ']' ? closed(open) : undefined;
    case 'value or ]':
      return start === ']' ? closed(open) : after(start, 'value', open);
    case 'value':
      return afterValue(start, open);
  }
}

function afterValue(start: string, open: Opening[]): Expected | undefined {
  if (start === '[' || start === '{') {
    open.push(start);
    return start === '[' ? 'value or ]' : 'key or }';
  }
  return '}],:'.includes(start) ? undefined : restOf(open.at(-1));
}

function closed(open: Opening[]): Expected {
  open.pop();
  return restOf(open.at(-1));
}

function restOf(container: Opening | undefined): Expected {
  if (container === undefined) return 'end';
  return container === '[' ? 'rest of list' : 'rest of object';
}

function mistakeAt(text: string, offset: number, expected: Expected): JsonMistake {
  const before = text.slice(0, offset).split('\n');
  return {
    line: before.length,
    column: (before.at(-1) ?? '').length + 1,
    found: foundAt(text, offset),
    allowed: WORDS[expected],
  };
}

function foundAt(text: string, offset: number): string {
  if (offset >= text.length) return 'the end';
  const [word] =
    /^(?:"[^"\n]{0,20}"?|[\w.+-]{1,20}|.)/su.exec(text.slice(offset, offset + 30)) ?? [];
  return word === undefined || /\p{Cc}/u.test(word) ? 'a control character' : word;
}

function lengthAt(pattern: RegExp, text: string, offset: number): number {
  const sticky = new RegExp(pattern);
  sticky.lastIndex = offset;
  return sticky.exec(text)?.[0].length ?? 0;
}
