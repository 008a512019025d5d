import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { faultsOf } from '#core/fault.ts';
import { valueOf } from '../example-corner.ts';
import { anyDocument } from './document-arbitraries.ts';
import { renamed, replaced, valueAt, waysInto, written, type Way } from './edit.ts';
import { BARE_DOCUMENT, GOOD_DOCUMENT } from './good-document.ts';

/** Keys that may be left out. */
const OPTIONAL =
  /^(rotation_deg|forces|steering|hub|change|wheel\.(camber_deg|toe_deg|rollingRadius_mm)|forces\[2\]\.shaftDirection|steering\.assist|change\.\w+)$/;

const documents = [
  ['the full document', GOOD_DOCUMENT],
  ['the bare document', BARE_DOCUMENT],
] as const;

describe.each(documents)('every value of %s', (_, document) => {
  const ways = waysInto(document);
  const places = (corrupted: unknown): readonly string[] =>
    faultsOf(readCornerDocument(corrupted)).map(({ path }) => path);

  test.each([null, true, 'a text', '300', NaN, Infinity, -Infinity, {}, [], () => 1])(
    'replaced by %s is a fault at its place',
    (by) => {
      for (const way of ways) {
        if (isFine(by, way)) continue;
        const found = places(replaced(document, way, by));
        expect(found.some((path) => path.startsWith(written(way)))).toBe(true);
      }
    },
  );

  test('left out is a fault at its place, or may be left out', () => {
    for (const way of ways) {
      const [last] = way.slice(-1);
      const found = places(replaced(document, way, undefined));
      if (OPTIONAL.test(written(way))) expect(found).toEqual([]);
      // Out of a list, a member takes its place along: then the list is what is wrong.
      else if (typeof last === 'string') expect(found).toContain(written(way));
    }
  });

  test('under a mistyped key is a fault at that key, with the right one suggested', () => {
    for (const way of ways) {
      const [last] = way.slice(-1);
      if (typeof last !== 'string') continue;
      const typed = `${last.slice(0, 1)}${last.slice(2)}`;
      const place = written([...way.slice(0, -1), typed]);
      const faults = faultsOf(readCornerDocument(renamed(document, way, typed)));
      const unknown = faults.find(({ path }) => path === place);
      // A force without its case has no keys to compare with.
      if (last === 'case') expect(faults.length).toBeGreaterThan(0);
      else expect(unknown?.wrong).toContain(`did you mean ${last}?`);
    }
  });

  test('with a unit in place of its own is a fault at that key, with the right one suggested', () => {
    for (const way of ways) {
      const [last] = way.slice(-1);
      if (typeof last !== 'string' || !last.includes('_')) continue;
      const typed = last.replace(/_.*/, '_in');
      const place = written([...way.slice(0, -1), typed]);
      const faults = faultsOf(readCornerDocument(renamed(document, way, typed)));
      expect(faults.find(({ path }) => path === place)?.wrong).toContain(`did you mean ${last}?`);
    }
  });

  test('that is a number is a fault when it is out of all reason', () => {
    for (const way of ways) {
      if (typeof valueAt(document, way) !== 'number') continue;
      for (const by of [1e9, -1e9])
        expect(places(replaced(document, way, by))).toContain(written(way));
    }
  });
});

/** Whether the replacement happens to be allowed there: an empty change, or a list without forces. */
function isFine(by: unknown, way: Way): boolean {
  const path = written(way);
  if (path === 'change') return typeof by === 'object' && by !== null && !Array.isArray(by);
  return path === 'forces' && Array.isArray(by);
}

describe('any document', () => {
  test('is the same after it has been written as JSON and read', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const back = valueOf(readCornerDocument(JSON.parse(JSON.stringify(document))));
        expect(back).toEqual(document);
        expect(valueOf(readCornerDocument(back))).toEqual(back);
      }),
    );
  });

  test('keeps the order of its keys', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const back = valueOf(readCornerDocument(document));
        expect(JSON.stringify(back)).toBe(JSON.stringify(document));
      }),
    );
  });
});

describe('anything at all', () => {
  test('is read or refused, never thrown about', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(faultsOf(readCornerDocument(value)).length).toBeGreaterThan(0);
      }),
    );
  });

  test('anywhere in a document neither throws', () => {
    fc.assert(
      fc.property(fc.constantFrom(...waysInto(GOOD_DOCUMENT)), fc.anything(), (way, value) => {
        const outcome = readCornerDocument(replaced(GOOD_DOCUMENT, way, value));
        if (!outcome.ok) expect(outcome.faults.length).toBeGreaterThan(0);
      }),
    );
  });
});
