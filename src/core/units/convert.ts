import { UNITS, type UnitName } from './units.ts';

/**
 * A value in SI: m, rad, N, N·m, kg, revolutions, Pa, m/s or a plain ratio, by the unit's dimension.
 *
 * @param value number of `unit`s, any sign
 * Source of the factors: see units.ts.
 */
export function toSI(value: number, unit: UnitName): number {
  const { multiply, divide } = UNITS[unit];
  return (value * multiply) / divide;
}

/** An SI value as a number of `unit`s: what `toSI` undoes, to the last digits. */
export function fromSI(value: number, unit: UnitName): number {
  const { multiply, divide } = UNITS[unit];
  return (value * divide) / multiply;
}
