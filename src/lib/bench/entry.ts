import type { UnitSystem } from '#core/display.ts';
import { problemMessage } from '#core/quantity-reader/problem-message.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import type { QuantityReading } from '#core/quantity-reader/reading.ts';
import { fromSI } from '#core/units/convert.ts';
import { UNITS, type UnitName } from '#core/units/units.ts';
import { weightOf } from '#core/weight.ts';
import { writeShortest } from '#core/write-number.ts';

/** A number that is typed: the unit its document has it in, and the range that documents allow. */
export interface EntryScale {
  readonly unit: UnitName;
  readonly least: number;
  readonly most: number;
}

/** What a field’s text says: nothing, a number in the document’s unit, or what is wrong with it. */
export type Entry =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'problem'; readonly message: string };

/** Digits that survive the way to another unit and back: more would show what rounding in binary leaves. */
const DIGITS = 12;

/** Five minutes of arc are 0.0833…°: a field shows so many decimals of a degree, the document keeps them all. */
const ANGLE_DECIMALS = 4;

/** The unit that a field shows: the document’s, or its American counterpart. */
export function shownUnit(unit: UnitName, system: UnitSystem): UnitName {
  if (system === 'metric') return unit;
  if (unit === 'mm') return 'in';
  if (unit === 'N') return 'lbf';
  return unit === 'Nm' ? 'lbf-ft' : unit;
}

/** Reads a field as people type: a decimal comma or point, any unit of the kind. Empty is no mistake. */
export function readEntry(text: string, scale: EntryScale, system: UnitSystem): Entry {
  if (text.trim() === '') return { kind: 'nothing' };
  const shown = shownUnit(scale.unit, system);
  const reading = standingOn(text, readQuantity(text, shown));
  if (reading.kind !== 'quantity') return { kind: 'problem', message: problemMessage(reading) };
  // Not by way of SI where the unit is the document’s own: a typed 0.1 is kept as 0.1.
  const value = digits(
    reading.unit === scale.unit ? reading.amount : fromSI(reading.si, scale.unit),
  );
  if (value >= scale.least && value <= scale.most) return { kind: 'number', value };
  return {
    kind: 'problem',
    message: `“${text.trim()}” is out of range. Allowed: ${rangeText(scale, system)}.`,
  };
}

/** A number of the document as its field shows it; without its unit. */
export function entryText(value: number, unit: UnitName, system: UnitSystem): string {
  const shown = shownUnit(unit, system);
  if (shown !== unit) return writeShortest(inUnit(value, unit, shown));
  return writeShortest(unit === 'deg' ? Number(value.toFixed(ANGLE_DECIMALS)) : value);
}

/** A number of the document with its unit: `12 mm`. */
export function withUnit(value: number, unit: UnitName, system: UnitSystem): string {
  const { symbol } = UNITS[shownUnit(unit, system)];
  const space = symbol === '' || symbol === '°' ? '' : '\u202f';
  return `${entryText(value, unit, system)}${space}${symbol}`;
}

/** Wheel scales show the mass that a load comes from: what is written in kilograms or pounds is taken as its weight. */
function standingOn(text: string, reading: QuantityReading): QuantityReading {
  const isMass = reading.kind === 'wrong-dimension' && reading.found === 'mass';
  if (!isMass || reading.expected !== 'force') return reading;
  const mass = readQuantity(text, 'kg');
  if (mass.kind !== 'quantity') return mass;
  const newtons = weightOf(mass.si);
  return { ...mass, si: newtons, amount: newtons, shown: newtons, unit: 'N' };
}

const rangeText = ({ unit, least, most }: EntryScale, system: UnitSystem): string =>
  `${entryText(least, unit, system)} to ${withUnit(most, unit, system)}`;

/** To a thousandth in another unit: what is read off a tape is not known closer. */
function inUnit(value: number, unit: UnitName, shown: UnitName): number {
  const { multiply, divide } = UNITS[unit];
  return Number(fromSI((value * multiply) / divide, shown).toFixed(3));
}

const digits = (value: number): number => Number(value.toPrecision(DIGITS));
