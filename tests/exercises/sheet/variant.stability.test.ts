import { expect, test } from 'vitest';
import { fingerprintOf } from '#exercises/sheet/fingerprint.ts';
import { codeOf } from '#exercises/sheet/short-code.ts';
import { resultOf, SHEET, variant } from './a-sheet.ts';

// No proof of anything: what a published sheet gives, kept so that it gives it for ever.

test('a sheet and a number give the numbers that they always gave', () => {
  expect(fingerprintOf(SHEET)).toMatchInlineSnapshot(`"3x0qgjxgck"`);
  expect([1, 2].flatMap((number) => variant(number)).map((one) => one.item)).toMatchInlineSnapshot(`
    [
      {
        "axis_mm": 795,
        "contact_mm": 811,
        "spacer_mm": 38,
      },
      {
        "brake_N": 4200,
        "forward": -1,
        "lever_mm": 126,
        "scrub_mm": -10,
      },
      {
        "axis_mm": 808,
        "contact_mm": 816,
        "spacer_mm": 11,
      },
      {
        "brake_N": 4000,
        "forward": -1,
        "lever_mm": 139,
        "scrub_mm": -30,
      },
    ]
  `);
});

test('a code is what it always was', () => {
  expect(codeOf(resultOf(7))).toMatchInlineSnapshot(
    `"kb1 3x0qg jxgck h7h6d bt8fr mp000 0wbgy bgcwx rf5b8 6n4k7 e0."`,
  );
});
