import { describe, expect, test } from 'vitest';
import { unit as mathjsUnit } from 'mathjs';
import unitmath from 'unitmath/dist/UnitMath.js';
import { fromSI, toSI } from '#core/units/convert.ts';
import { UNIT_NAMES, type UnitName } from '#core/units/units.ts';

/** One unit in SI, as decimal digits or as a quotient of them. Angles in half turns, so without π. */
interface Definition {
  readonly value: string;
  readonly over?: string;
  readonly halfTurns?: true;
  readonly source: string;
}

const SI =
  'The International System of Units (SI Brochure), prefixes and derived units, from memory';
const BROCHURE_8 =
  'SI Brochure, 9th ed. 2019, Table 8: units accepted for use with the SI, from memory';
const NIST = 'NIST SP 811 (2008), appendix B, factors in bold type (exact), from memory';
const PRODUCT = `${NIST}: product of inch, pound and standard gravity`;
const COUNT = 'plain count';

const DEFINITIONS: Readonly<Record<UnitName, Definition>> = {
  mm: { value: '0.001', source: SI },
  cm: { value: '0.01', source: SI },
  m: { value: '1', source: SI },
  in: { value: '0.0254', source: NIST },
  ft: { value: '0.3048', source: NIST },
  km: { value: '1000', source: SI },
  mi: { value: '1609.344', source: NIST },
  deg: { value: '1', over: '180', halfTurns: true, source: BROCHURE_8 },
  'deg-min': { value: '1', over: '180', halfTurns: true, source: BROCHURE_8 },
  arcmin: { value: '1', over: '10800', halfTurns: true, source: BROCHURE_8 },
  arcsec: { value: '1', over: '648000', halfTurns: true, source: BROCHURE_8 },
  rad: { value: '1', source: SI },
  N: { value: '1', source: SI },
  kN: { value: '1000', source: SI },
  lbf: { value: '4.4482216152605', source: PRODUCT },
  Nm: { value: '1', source: SI },
  'lbf-ft': { value: '1.3558179483314004', source: PRODUCT },
  'lbf-in': { value: '0.1129848290276167', source: PRODUCT },
  kg: { value: '1', source: SI },
  lb: { value: '0.45359237', source: NIST },
  rev: { value: '1', source: COUNT },
  Mrev: { value: '1000000', source: COUNT },
  bar: { value: '100000', source: `${BROCHURE_8} (7th edition on: 1 bar = 10⁵ Pa)` },
  kPa: { value: '1000', source: SI },
  psi: { value: '4.4482216152605', over: '0.00064516', source: PRODUCT },
  'km/h': { value: '1000', over: '3600', source: BROCHURE_8 },
  mph: { value: '0.44704', source: NIST },
  'm/s': { value: '1', source: SI },
  ratio: { value: '1', source: COUNT },
  percent: { value: '0.01', source: 'ISO 80000-1: % = 0.01, from memory' },
};

describe('one unit is worth its exact definition', () => {
  // Tolerance: the definition is evaluated in whole numbers and rounded once; π costs one rounding more.
  test.each(Object.entries(DEFINITIONS))('%s: %o', (name, { value, over = '1', halfTurns }) => {
    const expected = quotient(value, over) * (halfTurns ? Math.PI : 1);
    expect(deviation(toSI(1, name as UnitName), expected)).toBeLessThanOrEqual(
      halfTurns ? 3e-16 : 0,
    );
  });

  test('and the products are what their factors give in whole numbers', () => {
    const poundForce = 45_359_237n * 980_665n; // 10⁻¹³ N
    expect(poundForce).toBe(44_482_216_152_605n);
    expect(poundForce * 3048n).toBe(135_581_794_833_140_040n); // 10⁻¹⁷ N·m
    expect(poundForce * 254n).toBe(11_298_482_902_761_670n); // 10⁻¹⁷ N·m
    expect(1_609_344n * 100_000n).toBe(44_704n * 3_600_000n); // mile per hour: 0.44704 m/s
  });
});

/** How each library writes the unit and its SI unit; absent where it does not know the unit. */
interface Written {
  readonly unitmath?: readonly [string, string];
  readonly mathjs?: readonly [string, string];
}

const both = (unit: string, si: string): Written => ({ unitmath: [unit, si], mathjs: [unit, si] });

const IN_LIBRARIES: Readonly<Partial<Record<UnitName, Written>>> = {
  mm: both('mm', 'm'),
  cm: both('cm', 'm'),
  in: both('in', 'm'),
  ft: both('ft', 'm'),
  km: both('km', 'm'),
  mi: both('mi', 'm'),
  deg: both('deg', 'rad'),
  arcmin: both('arcmin', 'rad'),
  arcsec: both('arcsec', 'rad'),
  kN: both('kN', 'N'),
  lbf: both('lbf', 'N'),
  'lbf-ft': both('lbf ft', 'N m'),
  'lbf-in': both('lbf in', 'N m'),
  lb: both('lbm', 'kg'),
  bar: both('bar', 'Pa'),
  kPa: both('kPa', 'Pa'),
  psi: { unitmath: ['psi', 'Pa'] }, // mathjs 15 has a rounded psi, wrong in the twelfth digit
  'km/h': both('km/hour', 'm/s'),
  mph: { unitmath: ['mi/hour', 'm/s'], mathjs: ['mi/hour', 'm/s'] },
};

describe('two unit libraries agree', () => {
  // Tolerance: they multiply step by step, a few roundings of 1.1e-16 each.
  const tolerance = 2e-15;

  test.each(Object.entries(IN_LIBRARIES))('on %s', (name, written) => {
    const unit = name as UnitName;
    if (written.unitmath) {
      const [their, si] = written.unitmath;
      expect(
        deviation(toSI(37.5, unit), unitmath(`37.5 ${their}`).to(si).value),
      ).toBeLessThanOrEqual(tolerance);
    }
    if (written.mathjs) {
      const [their, si] = written.mathjs;
      expect(
        deviation(toSI(37.5, unit), mathjsUnit(`37.5 ${their}`).toNumber(si)),
      ).toBeLessThanOrEqual(tolerance);
    }
  });

  test('and only SI units, counts and ratios are left without such a witness', () => {
    const left = UNIT_NAMES.filter((name) => !(name in IN_LIBRARIES));
    expect(left).toEqual('m deg-min rad N Nm kg rev Mrev m/s ratio percent'.split(' '));
  });
});

test('published conversions', () => {
  const rows = [
    // values, unit, result, unit, half of the last printed digit
    { of: 100, unit: 'Nm', is: 73.756, in: 'lbf-ft', tolerance: 5e-4, source: NIST },
    { of: 32, unit: 'psi', is: 2.206, in: 'bar', tolerance: 5e-4, source: NIST },
    { of: 60, unit: 'mph', is: 96.56064, in: 'km/h', tolerance: 1e-12, source: NIST },
    { of: 1, unit: 'rad', is: 57.295_779_513, in: 'deg', tolerance: 5e-10, source: BROCHURE_8 },
  ] as const;
  for (const { of, unit, is, in: into, tolerance } of rows) {
    expect(Math.abs(fromSI(toSI(of, unit), into) - is)).toBeLessThanOrEqual(tolerance);
  }
});

/** How far a value is off, as a share of the expected one. */
const deviation = (value: number, expected: number): number => Math.abs(value / expected - 1);

/** The number nearest to a quotient of two decimals, by way of whole numbers. */
function quotient(above: string, below: string): number {
  const places = 20;
  const whole = (decimal: string): bigint => {
    const [digits = '', fraction = ''] = decimal.split('.');
    return BigInt(digits + fraction.padEnd(places, '0'));
  };
  const scaled = (whole(above) * 10n ** 40n) / whole(below);
  return Number(`${scaled}e-40`);
}
