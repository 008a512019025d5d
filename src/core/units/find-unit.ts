import { plainText } from '../plain-text.ts';
import { convertible, type Dimension } from './dimension.ts';
import { UNIT_NAMES, UNITS, type UnitName } from './units.ts';

/** Every way to write a unit, brought to one spelling, with what it can mean. */
export const SPELLINGS: ReadonlyMap<string, readonly UnitName[]> = collected();

/**
 * The unit that a written name or symbol stands for, or undefined where none does. Two marks have two
 * meanings, ′ (arc minute, foot) and ″ (arc second, inch): there the wanted dimension decides.
 *
 * @param written as typed: `ft-lb`, `N m`, `deg.`, `″`
 * @param wanted the dimension of the field it was typed in
 */
export function findUnit(written: string, wanted: Dimension): UnitName | undefined {
  const candidates = SPELLINGS.get(spelling(written)) ?? [];
  return candidates.find((name) => convertible(UNITS[name].dimension, wanted)) ?? candidates[0];
}

/**
 * One spelling for all ways of writing the same unit: small letters, no plural s, meter for metre, and
 * `·` for whatever stands between two factors. No two units of the table fall together by this (N and
 * kN, m and Mrev stay apart): tested.
 */
export function spelling(written: string): string {
  return plainText(written)
    .toLowerCase()
    .replace(/[\s.·-]+/g, '·')
    .replace(/^·|·$/g, '')
    .replace(/·?([/:])·?/g, '$1')
    .replaceAll('metre', 'meter')
    .replace(/(?<=[a-z]{2})s\b/g, '');
}

function collected(): ReadonlyMap<string, readonly UnitName[]> {
  const spellings = new Map<string, readonly UnitName[]>();
  for (const name of UNIT_NAMES) {
    const { symbol, aliases } = UNITS[name];
    for (const key of new Set([symbol, ...aliases].map(spelling))) {
      if (key !== '') spellings.set(key, [...(spellings.get(key) ?? []), name]);
    }
  }
  return spellings;
}
