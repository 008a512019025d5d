import { describe, expect, test } from 'vitest';
import { plainText } from '#core/plain-text.ts';

describe('look-alikes become one character', () => {
  const rows: readonly (readonly [string, string, string])[] = [
    [
      'no-break, thin, narrow, figure and wide spaces',
      '1\u00a02\u20093\u202f4\u20075\u30006',
      '1 2 3 4 5 6',
    ],
    ['tabs, line ends and runs of spaces', ' 1\t2\r\n 3  4 ', '1 2 3 4'],
    ['invisible characters', '\ufeff1\u200b2\u00ad3\u200e4', '1234'],
    ['minus, hyphens and dashes', '−1 ‐2 ‑3 –4 —5 ﹣6 －7', '-1 -2 -3 -4 -5 -6 -7'],
    ['apostrophes and primes', '1’2‘3′4´5`6ʹ7', "1'2'3'4'5'6'7"],
    ['double quotes and double primes', "1″ 2“ 3” 4\" 5'' 6′′", '1" 2" 3" 4" 5" 6"'],
    ['degree signs', '1° 2º 3˚', '1° 2° 3°'],
    ['strokes of a fraction', '1⁄2 3∕4', '1/2 3/4'],
    ['product signs', '1×2*3⋅4∙5•6✕7', '1·2·3·4·5·6·7'],
    ['vulgar fractions', '½ 1¾ 2 ⅛', '1/2 1 3/4 2 1/8'],
    ['raised digits', '10³ 10⁻³ 10⁺¹² in²', '10^3 10^-3 10^+12 in^2'],
    ['wide forms', '１２．５％', '12.5%'],
  ];
  test.each(rows)('%s', (_, written, plain) => {
    expect(plainText(written)).toBe(plain);
  });
});

test('letters keep their case, and plain text stays as it is', () => {
  expect(plainText("-1'234.5e3 kN·m 1°30'")).toBe("-1'234.5e3 kN·m 1°30'");
});

test('the minus sign of a raised exponent is told from that of a number', () => {
  expect(plainText('−10⁻²')).toBe('-10^-2');
});
