import { describe, expect, test } from 'vitest';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import { UNIT_NAMES, UNITS, type UnitName } from '#core/units/units.ts';

/** What is typed, the unit that the field shows, and the value in that unit. */
type Row = readonly [typed: string, wanted: UnitName, shown: number];

function expectRows(rows: readonly Row[]): void {
  test.each(rows)('%j in a field for %s is %d', (typed, wanted, shown) => {
    const reading = readQuantity(typed, wanted);
    expect(reading).toMatchObject({ kind: 'quantity' });
    if (reading.kind === 'quantity') expect(reading.shown).toBeCloseTo(shown, 12);
  });
}

describe('a number without a unit is in the shown unit', () => {
  expectRows([
    ['12', 'mm', 12],
    ['12.5', 'mm', 12.5],
    ['12,5', 'mm', 12.5],
    ['0,234', 'mm', 0.234],
    ['.5', 'mm', 0.5],
    [',5', 'mm', 0.5],
    ['5.', 'mm', 5],
    ['007', 'mm', 7],
    ['+4', 'mm', 4],
    ['-4', 'mm', -4],
    ['- 4', 'mm', -4],
    ['−4', 'mm', -4],
    ['–4,25', 'mm', -4.25],
    ['‑4', 'mm', -4],
    ['\u00a0−\u20094\u202f', 'mm', -4],
    ['１２', 'mm', 12],
    ['0', 'mm', 0],
    ['-0', 'mm', 0],
    ['1e12', 'mm', 1e12],
  ]);
});

describe('digits may stand in groups of three', () => {
  expectRows([
    ['1 234', 'N', 1234],
    ['1\u2009234', 'N', 1234],
    ['1\u202f234\u202f567', 'N', 1234567],
    ['1\u00a0234,5', 'N', 1234.5],
    ['1 234.5', 'N', 1234.5],
    ["1'234.5", 'N', 1234.5],
    ['1’234,5', 'N', 1234.5],
    ['1,234.5', 'N', 1234.5],
    ['1.234,5', 'N', 1234.5],
    ['1,234,567', 'N', 1234567],
    ['1.234.567', 'N', 1234567],
    ['1,234,567.8', 'N', 1234567.8],
    ['1 234,567', 'N', 1234.567],
    ['1234,567', 'N', 1234.567],
    ['0.123 456', 'N', 0.123456],
  ]);
});

describe('a single point is the decimal sign that the course itself prints', () => {
  expectRows([
    ['1.234', 'mm', 1.234],
    ['173.261', 'Nm', 173.261],
  ]);
});

describe('powers of ten', () => {
  expectRows([
    ['1.2e3', 'N', 1200],
    ['1.2E3', 'N', 1200],
    ['1,2e+3', 'N', 1200],
    ['1.2e-3', 'N', 0.0012],
    ['1.2e−3', 'N', 0.0012],
    ['1,5·10^3', 'N', 1500],
    ['1.5x10^3', 'N', 1500],
    ['1.5 X 10^3', 'N', 1500],
    ['1.5 × 10³', 'N', 1500],
    ['1.5*10**3', 'N', 1500],
    ['1.5⋅10⁻³', 'N', 0.0015],
    ['2·10^(-2)', 'N', 0.02],
    ['10^3', 'N', 1000],
    ['-10⁶', 'N', -1e6],
    ['1,234 567e3', 'N', 1234.567],
  ]);
});

describe('fractions', () => {
  expectRows([
    ['3/4', 'in', 0.75],
    ['-3/4', 'in', -0.75],
    ['3 / 4', 'in', 0.75],
    ['1 3/4', 'in', 1.75],
    ['1-3/4', 'in', 1.75],
    ['−1 3/4', 'in', -1.75],
    ['½', 'in', 0.5],
    ['1½', 'in', 1.5],
    ['2 ⅝', 'in', 2.625],
    ['7⁄8', 'in', 0.875],
    ['5/2', 'in', 2.5],
    ['3/4"', 'mm', 19.05],
  ]);
});

describe('degrees, minutes and seconds of arc', () => {
  expectRows([
    ["1°30'", 'deg', 1.5],
    ['1° 30′', 'deg', 1.5],
    ['1º30’', 'deg', 1.5],
    ['-0°24′', 'deg', -0.4],
    ['−0° 24′', 'deg', -0.4],
    ['1° 30′ 15″', 'deg', 1.5 + 15 / 3600],
    ["1°30'15''", 'deg', 1.5 + 15 / 3600],
    ['1° 30,5′', 'deg', 1 + 30.5 / 60],
    ['1°30', 'deg', 1.5],
    ['1 deg 30 min', 'deg', 1.5],
    ['12 degrees 6 minutes', 'deg', 12.1],
    ['1,5°', 'deg', 1.5],
    ['1.5 deg', 'deg', 1.5],
    ['30′', 'deg', 0.5],
    ["-24'", 'deg', -0.4],
    ['90″', 'deg', 0.025],
    ['0.5 rad', 'deg', 90 / Math.PI],
    ["1°30'", 'rad', Math.PI / 120],
    ["1°30'", 'deg-min', 1.5],
    ['1.5', 'deg-min', 1.5],
    ['1 30', 'deg-min', 1.5],
    ['-1:05', 'deg-min', -65 / 60],
    ['1.00', 'deg-min', 1],
    ['1.75', 'deg-min', 1.75],
  ]);
});

describe('another unit of the same dimension converts', () => {
  expectRows([
    ['2.5 in', 'mm', 63.5],
    ['2,5in.', 'mm', 63.5],
    ['2½″', 'mm', 63.5],
    ['5′', 'm', 1.524],
    ['1 234,5 mm', 'm', 1.2345],
    ['5e3 N', 'kN', 5],
    ['100 lbf', 'N', 444.82216152605],
    ['74 ft-lbs', 'Nm', (74 * 135581.79483314) / 1e5],
    ['10 N m', 'lbf-in', 10 / 0.1129848290276167],
    ['300 m', 'km', 0.3],
    ['5 %', 'ratio', 0.05],
    ['16:1', 'ratio', 16],
    ['0.5 ratio', 'percent', 50],
    ['5·10^6 rev', 'Mrev', 5],
    ['32 PSI', 'kPa', (32 * 4.4482216152605) / 0.64516],
    ['60 miles per hour', 'km/h', 96.56064],
  ]);
});

describe('what is typed comes back', () => {
  test('with its SI value, its amount and its unit', () => {
    expect(readQuantity('2 in', 'mm')).toEqual({
      kind: 'quantity',
      si: 0.0508,
      shown: 50.8,
      amount: 2,
      unit: 'in',
      unitTyped: true,
    });
    expect(readQuantity('2', 'mm')).toMatchObject({ unit: 'mm', unitTyped: false, si: 0.002 });
  });

  test('as the very same number where the unit stays', () => {
    for (const typed of ['0.1', '0.3', '58.18', '1e-7']) {
      expect(readQuantity(typed, 'lbf-ft')).toMatchObject({ shown: Number(typed) });
    }
  });
});

describe('an ambiguous number is asked back, never guessed', () => {
  const rows: readonly (readonly [string, UnitName, readonly number[], readonly string[]])[] = [
    ['1,234', 'mm', [1.234, 1234], ['1.234', '1234']],
    ['−1,234', 'mm', [-1.234, -1234], ['−1.234', '−1234']],
    ['1,000', 'km', [1, 1000], ['1', '1000']],
    ['12,345 N', 'kN', [0.012345, 12.345], ['12.345 N', '12345 N']],
    ['123,456e2', 'N', [12345.6, 12345600], ['12345.6', '12345600']],
    ['1.30', 'deg-min', [1.3, 1.5], ['1.3°', '1°30′']],
    ['-0,45', 'deg-min', [-0.45, -0.75], ['−0.45°', '−0°45′']],
  ];
  test.each(rows)('%j in a field for %s', (typed, wanted, shown, texts) => {
    const reading = readQuantity(typed, wanted);
    expect(reading.kind).toBe('ambiguous');
    if (reading.kind !== 'ambiguous') return;
    expect(reading.readings.map(({ text }) => text)).toEqual(texts);
    reading.readings.forEach(({ quantity }, place) => {
      expect(quantity.shown).toBeCloseTo(shown[place] ?? NaN, 12);
    });
  });
});

describe('what is no quantity says so', () => {
  test.each(['', ' ', '\t\u00a0\u200b'])('%j: nothing typed', (typed) => {
    expect(readQuantity(typed, 'mm').kind).toBe('empty');
  });

  test.each([
    ...['abc', 'mm', '-', '.', ',', '--5', '+-5', '±5', 'NaN', 'Infinity', '-Infinity', 'null'],
    ...['1 2', '12 34', '1 2345', '12..5', '1,2,3', '1.2.3', '1,23,456', '1.234,567.8', "1'23"],
    ...['12abc3', '1e2.5', '1e2e3', '0x10', '5 mm 3', '5 mm 3/8', '3/4/5', '1.5/2', '1/0'],
    ...['1 5/4', '1 4/4', "1°60'", "1°30'75''", "1°30.5'10''", '1.5°30′', '1 30', '1:30', '3²'],
    ...['5 ± 1', '5-6', '5..6 mm', '5.6.mm.7', '٣', '1__2', '<script>'],
  ])('%j: not a number', (typed) => {
    expect(readQuantity(typed, 'deg').kind).toBe('not-a-number');
  });

  test('a text too long to be a number', () => {
    expect(readQuantity('1'.repeat(101), 'mm')).toMatchObject({
      kind: 'not-a-number',
      wrong: 'has 101 characters',
    });
  });

  test.each(['1e13', '-1e13', '1e400', '9'.repeat(99), '1 234 567 890 123', '1000001 km'])(
    '%j: too large',
    (typed) => {
      expect(readQuantity(typed, 'mm')).toMatchObject({ kind: 'too-large', largest: 1e12 });
    },
  );

  test.each([
    ['5 mmm', 'mmm', 'mm'],
    ['5 inhc', 'inhc', 'in'],
    ['12 furlongs', 'furlongs', undefined],
    ['12 €', '€', undefined],
    ['1e', 'e', undefined],
  ] as const)('%j: unknown unit', (typed, unitText, suggestion) => {
    expect(readQuantity(typed, 'mm')).toEqual({
      kind: 'unknown-unit',
      text: typed,
      wanted: 'mm',
      unitText,
      ...(suggestion && { suggestion }),
    });
  });
});

describe('a unit of another dimension is named', () => {
  test('with what was found and what is expected', () => {
    expect(readQuantity('5 kN', 'mm')).toEqual({
      kind: 'wrong-dimension',
      text: '5 kN',
      wanted: 'mm',
      unit: 'kN',
      found: 'force',
      expected: 'length',
    });
    expect(readQuantity("1°30'", 'mm')).toMatchObject({ found: 'angle', expected: 'length' });
    expect(readQuantity('5 lb', 'N')).toMatchObject({ found: 'mass', expected: 'force' });
  });

  test('for every pair of units, and only where the dimensions differ', () => {
    const family = (name: UnitName): string => {
      const { dimension } = UNITS[name];
      return dimension === 'distance' ? 'length' : dimension;
    };
    for (const typed of UNIT_NAMES.filter((name) => name !== 'deg-min')) {
      const symbol = UNITS[typed].symbol || ':1';
      for (const wanted of UNIT_NAMES) {
        // ′ and ″ are a foot and an inch where a length is wanted.
        const marksALength = /[′″]/.test(symbol) && family(wanted) === 'length';
        const same = family(typed) === family(wanted) || marksALength;
        expect([symbol, wanted, readQuantity(`1 ${symbol}`, wanted).kind]).toEqual([
          symbol,
          wanted,
          same ? 'quantity' : 'wrong-dimension',
        ]);
      }
    }
  });
});
