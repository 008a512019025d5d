import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonMistake } from '#core/document/json-mistake.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('a text', () => {
  test('that JSON.parse takes has no mistake', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(4), (text, indent) => {
        expect(jsonMistake(text)).toBeUndefined();
        expect(jsonMistake(JSON.stringify(JSON.parse(text), null, indent))).toBeUndefined();
      }),
    );
  });

  test('has a mistake exactly where JSON.parse refuses it', () => {
    const pieces = fc.constantFrom(
      ...[
        '{',
        '}',
        '[',
        ']',
        ':',
        ',',
        '"a"',
        '"\\u00e9"',
        '"\\x"',
        '1',
        '-0',
        '1e5',
        '.5',
        'null',
      ],
      ...['tru', 'true', ' ', '\n', '\u00A0', '"', '\\', "'"],
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 12 }), (chosen) => {
        const text = chosen.join('');
        expect(jsonMistake(text) === undefined, text).toBe(isJson(text));
      }),
      { numRuns: 5000 },
    );
  });

  test('with one character more or less has a mistake exactly where JSON.parse refuses it', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), fc.constantFrom('', ',', '"', '}', '0'), (json, at, by) => {
        const place = at % (json.length + 1);
        const text = json.slice(0, place) + by + json.slice(place + 1);
        expect(jsonMistake(text) === undefined, text).toBe(isJson(text));
      }),
      { numRuns: 2000 },
    );
  });

  test('as long as a book is read in one go', () => {
    const long = JSON.stringify({ text: 'x'.repeat(300_000), nested: '\\"'.repeat(100_000) });
    expect(jsonMistake(long)).toBeUndefined();
    expect(jsonMistake(long.slice(0, -2))?.column).toBeGreaterThan(300_000);
    expect(jsonMistake('['.repeat(100_000))?.column).toBe(100_001);
  });
});
