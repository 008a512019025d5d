import { expect, test } from 'vitest';
import { problemMessage } from '#core/quantity-reader/problem-message.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import type { UnitName } from '#core/units/units.ts';

const rows: readonly (readonly [string, UnitName, string])[] = [
  ['', 'mm', 'Nothing has been entered. Allowed: a number, in mm unless another unit is given.'],
  [
    '',
    'percent',
    'Nothing has been entered. Allowed: a number, in % unless another unit is given.',
  ],
  ['', 'ratio', 'Nothing has been entered. Allowed: a number, or a percentage with its sign.'],
  ['', 'deg-min', 'Nothing has been entered. Allowed: degrees and minutes, such as 1°30′.'],
  [
    'abc',
    'mm',
    '“abc” does not start with a number. Allowed: one number, such as 12.5, 3/4 or 1.2e3.',
  ],
  ['1/0', 'mm', '“1/0” divides by 0. Allowed: a fraction with another number below the stroke.'],
  [
    '5 mm 3',
    'mm',
    '“5 mm 3” has “mm 3” after its number. Allowed: one number and at most one unit.',
  ],
  ["1°75'", 'deg', "“1°75'” has 75 minutes of arc. Allowed: minutes from 0 to 59."],
  ['1,234', 'N', '“1,234” can be read in more than one way. Enter 1.234 or 1234.'],
  ['5 kN', 'mm', '“5 kN” is a force, but a length is asked for. Allowed: mm, cm, m, in or ft.'],
  ['5 lb', 'N', '“5 lb” is a mass, but a force is asked for. Allowed: N, kN or lbf.'],
  ['5 mm', 'ratio', '“5 mm” is a length, but a ratio is asked for. Allowed: no unit or %.'],
  ['5 mm', 'deg-min', '“5 mm” is a length, but an angle is asked for. Allowed: °, ′, ″ or rad.'],
  [
    '5 mmm',
    'mm',
    '“mmm” is not a unit that is known here. Did you mean mm? Allowed: mm, cm, m, in or ft.',
  ],
  ['5 parsec', 'km', '“parsec” is not a unit that is known here. Allowed: km or mi.'],
  ['1e400', 'kN', '“1e400” is too large. Allowed: numbers from −1·10¹² to 1·10¹² kN.'],
  ['1e400', 'ratio', '“1e400” is too large. Allowed: numbers from −1·10¹² to 1·10¹².'],
];

test.each(rows)('%j in a field for %s: %s', (typed, wanted, message) => {
  const reading = readQuantity(typed, wanted);
  expect(reading.kind === 'quantity' ? 'understood' : problemMessage(reading)).toBe(message);
});
