import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareTyres } from '#core/tyre/compare.ts';
import { designation } from '#core/tyre/designation.ts';
import {
  codedOuterDiameter,
  outerDiameter,
  rimDiameter,
  sectionHeight,
} from '#core/tyre/dimensions.ts';
import { loadedRadius } from '#core/tyre/loaded-radius.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { rollingCircumference, rollingRadius } from '#core/tyre/rolling.ts';
import { isSpeedSymbol, SPEED_SYMBOLS_KMH } from '#core/tyre/speed-symbol.ts';
import type { FlotationTyre, MetricTyre, Tyre } from '#core/tyre/tyre.ts';

const speedSymbol = fc.constantFrom(...Object.keys(SPEED_SYMBOLS_KMH).filter(isSpeedSymbol));

const service = fc
  .record({
    loadIndex: fc.option(fc.integer({ min: 60, max: 130 }), { nil: undefined }),
    speedSymbol: fc.option(speedSymbol, { nil: undefined }),
    bracketed: fc.boolean(),
    extraLoad: fc.boolean(),
  })
  .map(({ loadIndex, speedSymbol: symbol, bracketed, extraLoad }) => ({
    ...(loadIndex !== undefined && { loadIndex }),
    ...(symbol !== undefined && { speedSymbol: symbol }),
    fasterThanSymbol: bracketed && symbol !== undefined,
    extraLoad,
  }));

const construction = fc.constantFrom(
  { construction: 'radial' as const, forHighSpeed: false },
  { construction: 'radial' as const, forHighSpeed: true },
  { construction: 'diagonal' as const, forHighSpeed: false },
  { construction: 'bias-belted' as const, forHighSpeed: false },
);

const metricTyres: fc.Arbitrary<MetricTyre> = fc
  .record({
    size: fc.record({
      use: fc.constantFrom('passenger', 'P', 'LT', 'C', 'T', 'HL'),
      sectionWidth_mm: fc.integer({ min: 10, max: 45 }).map((tens) => tens * 10 + 5),
      aspectRatio_percent: fc.integer({ min: 4, max: 19 }).map((fives) => fives * 5),
      rimCode: fc.integer({ min: 16, max: 60 }).map((halves) => halves / 2),
    }),
    construction,
    service,
  })
  .map((parts) => ({ kind: 'metric', ...parts.size, ...parts.construction, ...parts.service }));

const flotationTyres: fc.Arbitrary<FlotationTyre> = fc
  .record({
    size: fc.record({
      outerDiameter_in: fc.integer({ min: 27, max: 60 }),
      sectionWidth_in: fc.integer({ min: 10, max: 40 }).map((halves) => halves / 2),
      rimCode: fc.integer({ min: 8, max: 23 }),
    }),
    construction,
    service,
  })
  .map((parts) => ({ kind: 'flotation', ...parts.size, ...parts.construction, ...parts.service }));

const tyres: fc.Arbitrary<Tyre> = fc.oneof(metricTyres, flotationTyres);

test('what is written is read back as the same tyre', () => {
  fc.assert(
    fc.property(tyres, (tyre) => {
      expect(parseTyre(designation(tyre))).toEqual({ ok: true, value: tyre });
    }),
  );
});

test('no text makes the parser throw, and every refusal says what is allowed', () => {
  const nearly = fc
    .array(
      fc.constantFrom(
        ...['205', '55', '16', '31', '10.50', '/', 'R', 'ZR', 'x', ' ', '-', 'LT', 'P', 'C', '91V'],
        ...['(', ')', 'XL', 'M+S', '0', ',', '×', '⁄'],
      ),
      { maxLength: 10 },
    )
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(fc.oneof(nearly, fc.string({ unit: 'binary' })), (text) => {
      const outcome = parseTyre(text);
      if (outcome.ok) {
        expect(outerDiameter(outcome.value)).toBeGreaterThan(rimDiameter(outcome.value));
      } else {
        expect(outcome.faults.length).toBeGreaterThan(0);
        for (const { wrong, allowed } of outcome.faults) {
          expect(wrong).not.toBe('');
          expect(allowed).not.toBe('');
        }
      }
    }),
    { numRuns: 1000 },
  );
});

test('the outer diameter is the rim and two section heights', () => {
  fc.assert(
    fc.property(tyres, (tyre) => {
      const sum = rimDiameter(tyre) + 2 * sectionHeight(tyre);
      expect(Math.abs(sum - outerDiameter(tyre))).toBeLessThan(1e-15);
    }),
  );
});

test('rounding by the standard moves a metric diameter by at most 1.5 mm', () => {
  fc.assert(
    fc.property(metricTyres, (tyre) => {
      // Half a millimetre for the rim and for each of the two section heights.
      expect(Math.abs(codedOuterDiameter(tyre) - outerDiameter(tyre))).toBeLessThan(0.0015 + 1e-12);
    }),
  );
});

test('every estimate lies within its range, and the loaded radius below the rolling radius below D/2', () => {
  fc.assert(
    fc.property(tyres, (tyre) => {
      for (const { value, least, most, assumption } of [
        rollingCircumference(tyre),
        rollingRadius(tyre),
        loadedRadius(tyre),
      ]) {
        expect(least).toBeLessThan(value);
        expect(most).toBeGreaterThan(value);
        expect(assumption).toMatch(/\.$/);
      }
      expect(loadedRadius(tyre).value).toBeLessThan(rollingRadius(tyre).value);
      expect(rollingRadius(tyre).most).toBeLessThan(outerDiameter(tyre) / 2);
    }),
  );
});

test('there and back again is no change', () => {
  fc.assert(
    fc.property(tyres, tyres, (one, other) => {
      const there = compareTyres(one, other);
      const back = compareTyres(other, one);
      expect(there.trueSpeedPerShown * back.trueSpeedPerShown).toBeCloseTo(1, 14);
      expect(there.outerDiameter).toBe(-back.outerDiameter + 0);
      expect(1 + there.relative).toBeCloseTo(there.trueSpeedPerShown, 14);
    }),
  );
});
