import { signPhrase, type Quantity, type QuantityKind } from './quantities.ts';
import { fromSI } from './units/convert.ts';
import { UNITS, type UnitName } from './units/units.ts';
import { writeFixed } from './write-number.ts';

/** The two ways of showing results; angles are in degrees in both. */
export type UnitSystem = 'metric' | 'us';

interface Shown {
  readonly unit: UnitName;
  /** Below nought for whole tens, hundreds, thousands: an estimate is not shown closer than it is known. */
  readonly decimals: number;
}

/** Between a number and its unit; none before the degree sign. */
const NARROW_SPACE = '\u202f';

/** The unit and the decimals of each kind of quantity: about a tenth of a millimetre and of a degree. */
export const SHOWN: Readonly<Record<UnitSystem, Readonly<Record<QuantityKind, Shown>>>> = {
  metric: {
    length: { unit: 'mm', decimals: 1 },
    angle: { unit: 'deg', decimals: 1 },
    force: { unit: 'N', decimals: 0 },
    moment: { unit: 'Nm', decimals: 1 },
    life: { unit: 'Mrev', decimals: 0 },
    distance: { unit: 'km', decimals: -3 },
    share: { unit: 'percent', decimals: 1 },
    speed: { unit: 'km/h', decimals: 1 },
  },
  us: {
    length: { unit: 'in', decimals: 2 },
    angle: { unit: 'deg', decimals: 1 },
    force: { unit: 'lbf', decimals: 0 },
    moment: { unit: 'lbf-ft', decimals: 1 },
    life: { unit: 'Mrev', decimals: 0 },
    distance: { unit: 'mi', decimals: -3 },
    share: { unit: 'percent', decimals: 1 },
    speed: { unit: 'mph', decimals: 1 },
  },
};

/** The number alone, in the unit of its kind: `−8.2`. */
export function numberText(
  value: number,
  kind: QuantityKind,
  system: UnitSystem = 'metric',
): string {
  const { unit, decimals } = SHOWN[system][kind];
  const shown = fromSI(value, unit);
  if (decimals >= 0) return writeFixed(shown, decimals);
  const whole = 10 ** -decimals;
  return grouped(writeFixed(whole * Math.round(shown / whole), 0));
}

/** Long numbers of whole thousands are read by their groups. */
const grouped = (digits: string): string => digits.replace(/\B(?=(?:\d{3})+$)/g, NARROW_SPACE);

/** The symbol of the unit, with the space that belongs before it. */
export function unitText(kind: QuantityKind, system: UnitSystem = 'metric'): string {
  const { symbol } = UNITS[SHOWN[system][kind].unit];
  return symbol === '°' ? symbol : NARROW_SPACE + symbol;
}

/** A value as it is shown: `−8.2 mm`, `13.0°`. SI in, the unit of its kind out. */
export const valueText = (
  value: number,
  kind: QuantityKind,
  system: UnitSystem = 'metric',
): string => numberText(value, kind, system) + unitText(kind, system);

/** Whether a value is shown as nought, and so has no direction. */
export const shownAsZero = (
  value: number,
  kind: QuantityKind,
  system: UnitSystem = 'metric',
): boolean => !/[1-9]/.test(numberText(value, kind, system));

/** The word for the value's direction: `inboard`. Empty for nought and for quantities without a sign. */
export function directionWord(
  value: number,
  quantity: Quantity,
  system: UnitSystem = 'metric',
): string {
  if (shownAsZero(value, quantity.kind, system)) return '';
  return (value > 0 ? quantity.positive : quantity.negative) ?? '';
}

/** The sign as a clause: `the axis meets the road inboard of the contact centre`. Empty where there is no direction. */
export function directionClause(
  value: number,
  quantity: Quantity,
  system: UnitSystem = 'metric',
): string {
  if (!quantity.subject || directionWord(value, quantity, system) === '') return '';
  return `${quantity.subject} ${signPhrase(quantity, value > 0 ? 'positive' : 'negative')}`;
}

/** Size and direction: `8.2 mm outboard`. */
export function sizeText(value: number, quantity: Quantity, system: UnitSystem = 'metric'): string {
  const word = directionWord(value, quantity, system);
  const size = valueText(word === '' ? value : Math.abs(value), quantity.kind, system);
  return word === '' ? size : `${size} ${word}`;
}

/** Name, size and direction, for reading aloud: `scrub radius 8.2 mm outboard`. */
export const spokenValue = (
  value: number,
  quantity: Quantity,
  system: UnitSystem = 'metric',
): string => `${quantity.name} ${sizeText(value, quantity, system)}`;
