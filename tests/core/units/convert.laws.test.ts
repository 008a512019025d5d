import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromSI, toSI } from '#core/units/convert.ts';
import { UNIT_NAMES } from '#core/units/units.ts';

const unit = fc.constantFrom(...UNIT_NAMES);
/** Sizes that people type; the tiniest binary numbers have fewer digits, and other laws. */
const value = fc
  .double({ min: -1e9, max: 1e9, noNaN: true })
  .filter((typed) => typed === 0 || Math.abs(typed) > 1e-12);

test('to SI and back is the same value, but for four roundings', () => {
  fc.assert(
    fc.property(unit, value, (name, typed) => {
      const back = fromSI(toSI(typed, name), name);
      expect(Math.abs(back - typed)).toBeLessThanOrEqual(5e-16 * Math.abs(typed));
    }),
  );
});

test('conversion keeps sign and proportion: twice the value is exactly twice the SI value', () => {
  fc.assert(
    fc.property(unit, value, (name, typed) => {
      expect(toSI(2 * typed, name)).toBe(2 * toSI(typed, name));
      expect(toSI(-typed, name)).toBe(-toSI(typed, name));
    }),
  );
});

test('half millimetres and half kilonewtons become the numbers nearest to their SI value', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (halves) => {
      const written = (halves / 2).toString();
      expect(toSI(halves / 2, 'mm')).toBe(Number(`${written}e-3`));
      expect(toSI(halves / 2, 'kN')).toBe(Number(`${written}e3`));
    }),
  );
});
