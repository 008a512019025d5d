import fc from 'fast-check';
import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { problemMessage } from '#core/quantity-reader/problem-message.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import { UNIT_NAMES, UNITS } from '#core/units/units.ts';
import {
  writeDegrees,
  writeDegreesMinutes,
  writeFixed,
  writeShortest,
  writeSignificant,
} from '#core/write-number.ts';

const unit = fc.constantFrom(...UNIT_NAMES);

/** Texts made of what numbers are made of, so that many are nearly right. */
const nearlyANumber = fc
  .array(
    fc.constantFrom(
      ...[
        '0',
        '1',
        '7',
        '12',
        '345',
        '1000',
        '.',
        ',',
        ' ',
        '\u2009',
        '\u202f',
        "'",
        '’',
        '-',
        '−',
      ],
      ...['+', '/', 'e', 'E', 'x10^', '·10', '³', '⁻', '½', '°', '′', '″', '"', ':', '%', '(', ')'],
      ...['mm', 'in', 'N', 'N·m', 'ft-lb', 'lb', 'deg', 'min', 'psi', 'km/h', 'q', '\u200b', '\n'],
    ),
    { maxLength: 12 },
  )
  .map((parts) => parts.join(''));

const anyText = fc.oneof(
  { weight: 3, arbitrary: nearlyANumber },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 120 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme' }) },
);

test('no text makes the reader throw, and no quantity has a number that is not finite, or −0', () => {
  fc.assert(
    fc.property(anyText, unit, (text, wanted) => {
      const reading = readQuantity(text, wanted);
      if (reading.kind !== 'quantity') return;
      for (const value of [reading.si, reading.shown, reading.amount]) {
        expect(Number.isFinite(value)).toBe(true);
        expect(Object.is(value, -0)).toBe(false);
      }
    }),
    { numRuns: 5000 },
  );
});

test('every problem has a sentence that ends with a full stop and has no hole in it', () => {
  fc.assert(
    fc.property(anyText, unit, (text, wanted) => {
      const reading = readQuantity(text, wanted);
      if (reading.kind === 'quantity') return;
      const message = problemMessage(reading).replace(/“[^]*”/, '“…”');
      expect(message).toMatch(/\.$/);
      expect(message).not.toMatch(/undefined|NaN|Infinity|\[object/);
    }),
    { numRuns: 2000 },
  );
});

test('an ambiguous number has at least two readings, and each text says its own without doubt', () => {
  const doubtful = fc
    .tuple(
      fc.constantFrom('', '-', '+'),
      fc.integer({ min: 1, max: 999 }),
      fc.integer({ min: 0, max: 999 }),
      fc.constantFrom('', ' mm', 'in', '"', ' N', '°', ':1', ' %', ' ft-lb', "'"),
      unit,
    )
    .map(([sign, thousands, rest, unitText, wanted]) => ({
      text: `${sign}${thousands},${String(rest).padStart(3, '0')}${unitText}`,
      wanted,
    }));
  fc.assert(
    fc.property(doubtful, ({ text, wanted }) => {
      const reading = readQuantity(text, wanted);
      if (reading.kind === 'wrong-dimension') return;
      expect(reading.kind).toBe('ambiguous');
      if (reading.kind !== 'ambiguous') return;
      expect(reading.readings.length).toBeGreaterThanOrEqual(2);
      for (const { text: certain, quantity } of reading.readings) {
        expect(readQuantity(certain, wanted)).toMatchObject({
          kind: 'quantity',
          shown: quantity.shown,
        });
      }
    }),
  );
});

const printable = fc.double({ min: -1e11, max: 1e11, noNaN: true });

test('what is written with any number of digits is read back as the number that was written', () => {
  const writers = fc.oneof(
    fc.integer({ min: 0, max: 12 }).map((count) => (value: number) => writeFixed(value, count)),
    fc
      .integer({ min: 1, max: 17 })
      .map((count) => (value: number) => writeSignificant(value, count)),
    fc.constant(writeShortest),
  );
  fc.assert(
    fc.property(
      printable,
      writers,
      unit.filter((name) => name !== 'deg-min'),
      (value, write, name) => {
        const written = write(value);
        const { symbol } = UNITS[name];
        const plain = Number(
          written
            .replace('−', '-')
            .replace(
              /·10([⁻⁰¹²³⁴-⁹]+)/,
              (_, raised: string) => `e${raised.normalize('NFKD').replace('−', '-')}`,
            ),
        );
        for (const text of [written, `${written}\u202f${symbol}`, written.replace('.', ',')]) {
          const reading = readQuantity(text, name);
          if (reading.kind === 'ambiguous') {
            expect(text).toContain(',');
          } else {
            expect(reading).toMatchObject({ kind: 'quantity' });
            expect(reading.kind === 'quantity' && reading.amount).toBe(plain === 0 ? 0 : plain);
          }
        }
      },
    ),
    { numRuns: 500 },
  );
});

test('the shortest writing loses nothing', () => {
  fc.assert(
    fc.property(printable, (value) => {
      expect(readQuantity(writeShortest(value), 'N')).toMatchObject({
        shown: value === 0 ? 0 : value,
      });
    }),
  );
});

test('degrees and minutes are read back to half a minute, decimal degrees to half a digit', () => {
  fc.assert(
    fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (angle) => {
      const withMinutes = readQuantity(writeDegreesMinutes(radians(angle)), 'deg');
      const decimal = readQuantity(writeDegrees(radians(angle), 2), 'deg-min');
      expect(withMinutes.kind === 'quantity' && Math.abs(withMinutes.shown - angle)).toBeLessThan(
        0.5 / 60 + 1e-9,
      );
      expect(decimal.kind === 'quantity' && Math.abs(decimal.shown - angle)).toBeLessThan(
        0.005 + 1e-9,
      );
    }),
  );
});
