import { plainText } from '../plain-text.ts';
import { fromSI, toSI } from '../units/convert.ts';
import { convertible } from '../units/dimension.ts';
import { findUnit } from '../units/find-unit.ts';
import { suggestUnit } from '../units/suggest-unit.ts';
import { UNITS, type UnitName } from '../units/units.ts';
import { writeDegreesMinutes, writeShortest } from '../write-number.ts';
import type { Numeral } from './numeral.ts';
import { numeralAtStart } from './numeral-at-start.ts';
import type { QuantityRead, QuantityReading } from './reading.ts';
import { degreesPointMinutes, sexagesimal } from './sexagesimal.ts';

/** Longer texts are no numbers, and nobody should have to wait for that answer. */
const LONGEST_TEXT = 100;

/** No quantity of the course comes near this size in any unit that it is shown in. */
const LARGEST = 1e12;

/**
 * Reads a typed number with or without a unit.
 *
 * Understood: decimal point or comma; digits in groups of three by spaces, apostrophes, points or
 * commas; any minus sign; `1.2e3`, `1,5·10^3`; `3/4`, `1 3/4`; `1°30'`, `-0°24′`; every unit of
 * units.ts in every spelling. Without a unit the shown one is meant; another unit of the same dimension
 * converts. Where two numbers can be meant (`1,234`) both come back, and the person has to choose.
 *
 * Never throws, whatever the text; the numbers of a quantity are finite.
 *
 * @param text as typed
 * @param wanted the unit that the field shows
 */
export function readQuantity(text: string, wanted: UnitName): QuantityReading {
  if (text.length > LONGEST_TEXT) {
    const asked = { text: `${text.slice(0, LONGEST_TEXT)}…`, wanted };
    const wrong = `has ${text.length} characters`;
    return { kind: 'not-a-number', ...asked, wrong, allowed: `at most ${LONGEST_TEXT} characters` };
  }
  const plain = plainText(text);
  const asked = { text: plain, wanted };
  if (plain === '') return { kind: 'empty', ...asked };
  const numeral = withUnitText(plain, wanted);
  if (!numeral.ok) {
    return { kind: 'not-a-number', ...asked, wrong: numeral.wrong, allowed: numeral.allowed };
  }

  const unitText = numeral.rest;
  const expected = UNITS[wanted].dimension;
  const unit = unitText === '' ? wanted : findUnit(unitText, expected);
  if (unit === undefined && /\d/.test(unitText)) {
    const wrong = `has “${unitText}” after its number`;
    return { kind: 'not-a-number', ...asked, wrong, allowed: 'one number and at most one unit' };
  }
  if (unit === undefined) {
    const suggestion = suggestUnit(unitText, expected);
    return { kind: 'unknown-unit', ...asked, unitText, ...(suggestion && { suggestion }) };
  }
  const found = UNITS[unit].dimension;
  if (!convertible(found, expected)) {
    return { kind: 'wrong-dimension', ...asked, unit, found, expected };
  }

  const unitTyped = unitText !== '';
  const minutesMeant = unit === 'deg-min' ? degreesPointMinutes(plain) : undefined;
  const minuteAmounts = minutesMeant === undefined ? [] : [minutesMeant];
  const amounts = new Set([...numeral.values, ...minuteAmounts]);
  const quantities = [...amounts].map((amount) => quantity(amount, unit, wanted, unitTyped));
  if (quantities.some(({ shown }) => !(Math.abs(shown) <= LARGEST))) {
    return { kind: 'too-large', ...asked, largest: LARGEST };
  }
  const [only, ...others] = quantities;
  if (only !== undefined && others.length === 0) return only;
  const readings = quantities.map((read) => ({
    text: read.amount === minutesMeant ? writeDegreesMinutes(read.si) : unmistakable(read),
    quantity: read,
  }));
  return { kind: 'ambiguous', ...asked, readings };
}

/** The number, and the rest as the text of its unit: an angle with minutes has brought its own. */
function withUnitText(plain: string, wanted: UnitName): Numeral {
  const angle = sexagesimal(plain, wanted === 'deg-min');
  if (angle === undefined) return numeralAtStart(plain);
  return angle.ok ? { ...angle, rest: '°' } : angle;
}

/** How to type a quantity so that nothing else can be meant. */
function unmistakable({ amount, unit, unitTyped }: QuantityRead): string {
  if (unit === 'deg-min') return `${writeShortest(amount)}°`;
  return writeShortest(amount) + (unitTyped ? ` ${UNITS[unit].symbol || ':1'}` : '');
}

function quantity(
  amount: number,
  unit: UnitName,
  wanted: UnitName,
  unitTyped: boolean,
): QuantityRead {
  const si = toSI(amount, unit);
  return {
    kind: 'quantity',
    si: withoutNegativeZero(si),
    // Not by way of SI where the unit stays: a typed 0.1 comes back as 0.1.
    shown: withoutNegativeZero(sameSize(unit, wanted) ? amount : fromSI(si, wanted)),
    amount: withoutNegativeZero(amount),
    unit,
    unitTyped,
  };
}

const sameSize = (a: UnitName, b: UnitName): boolean =>
  UNITS[a].multiply === UNITS[b].multiply && UNITS[a].divide === UNITS[b].divide;

const withoutNegativeZero = (value: number): number => (value === 0 ? 0 : value);
