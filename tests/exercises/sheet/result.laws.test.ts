import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase32, toBase32 } from '#exercises/sheet/base32.ts';
import { piecesOf } from '#exercises/sheet/pieces.ts';
import { readResult } from '#exercises/sheet/read-result.ts';
import { checkOf, sealed, type SheetResult } from '#exercises/sheet/result.ts';
import { codeOf, resultOfCode } from '#exercises/sheet/short-code.ts';
import { valueOf } from '../../core/example-corner.ts';

const typed = fc.oneof(
  fc.record({ text: fc.stringMatching(/^[0-9.,\-+ m°′½−]{0,12}$/) }),
  fc.record({
    text: fc.stringMatching(/^[0-9.]{0,8}$/),
    word: fc.constantFrom('positive' as const, 'negative' as const),
  }),
);

const result: fc.Arbitrary<SheetResult> = fc.record(
  {
    format: fc.constant('knucklebook result' as const),
    version: fc.constant(1 as const),
    sheet: fc.stringMatching(/^[0-9a-hjkmnp-tv-z]{10}$/),
    number: fc.integer({ min: 1, max: 999_999 }),
    handedIn_min: fc.integer({ min: 0, max: 99_999_999 }),
    items: fc.array(
      fc.record({
        attempts: fc.array(fc.array(typed, { maxLength: 4 }), { maxLength: 9 }),
        hints: fc.uniqueArray(fc.integer({ min: 0, max: 8 }), { maxLength: 4 }),
      }),
      { maxLength: 30 },
    ),
  },
  { requiredKeys: ['format', 'version', 'sheet', 'number', 'items'] },
);

describe('whatever was typed', () => {
  test('comes back from the document', () => {
    fc.assert(
      fc.property(result, (one) => {
        const written: unknown = JSON.parse(JSON.stringify(sealed(one)));
        expect(valueOf(readResult(written))).toEqual(sealed(one));
      }),
    );
  });

  test('comes back from the code, also in capitals, broken over lines and among other words', () => {
    fc.assert(
      fc.property(result, (one) => {
        const code = codeOf(sealed(one));
        expect(valueOf(resultOfCode(code))).toEqual(sealed(one));
        const mangled = `Here it is:\n${code.toUpperCase().replaceAll(' ', '\r\n')} Thanks!`;
        expect(piecesOf('mail', mangled).map((piece) => valueOf(piece.result))).toEqual([
          sealed(one),
        ]);
      }),
    );
  });
});

test('a code with one sign mistyped never passes for the result', () => {
  fc.assert(
    fc.property(result, fc.nat(), fc.stringMatching(/^[0-9a-hjkmnp-tv-z]$/), (one, at, sign) => {
      const code = codeOf(sealed(one));
      const i = 4 + (at % (code.length - 5));
      fc.pre(code.charAt(i) !== ' ' && code.charAt(i) !== sign);
      const read = resultOfCode(code.slice(0, i) + sign + code.slice(i + 1));
      // The last sign may hold filling only, and then nothing is changed.
      if (read.ok && checkOf(read.value) === read.value.check)
        expect(read.value).toEqual(sealed(one));
    }),
  );
});

test('a text never breaks the reader', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      for (const { result: read } of [...piecesOf('x', text), ...piecesOf('x', `kb1 ${text}.`)])
        expect(typeof read.ok).toBe('boolean');
    }),
  );
});

test('bytes come back from signs', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
      expect(fromBase32(toBase32(bytes))).toEqual(bytes);
    }),
  );
});
