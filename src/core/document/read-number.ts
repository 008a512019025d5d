import { note, refuse, type Place } from './place.ts';
import type { Triple } from './corner-document.ts';

/** Which numbers a place takes, both bounds included. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly unit: 'mm' | 'degrees' | 'N' | '';
}

/** What a number a thousand times too small was probably given in. */
const THOUSANDFOLD = { mm: 'metres', N: 'kilonewtons', degrees: undefined, '': undefined } as const;

const STAND_IN = NaN;
const TRIPLE_STAND_IN: Triple = [STAND_IN, STAND_IN, STAND_IN];

/** Reads a finite number within a range. */
export function readNumber(place: Place, range: Range): number {
  const { value } = place;
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    refuse(place, rangeText(range));
    return STAND_IN;
  }
  if (isWithin(value, range)) return value;
  note(place, `is ${value}${largerUnitHint(value, range)}`, rangeText(range));
  return STAND_IN;
}

/** Reads three finite numbers [x, y, z], each within a range. */
export function readTriple(place: Place, range: Range): Triple {
  const { value, path, faults } = place;
  if (!Array.isArray(value)) {
    refuse(place, `a list of three numbers [x, y, z], each ${rangeText(range)}`);
    return TRIPLE_STAND_IN;
  }
  if (value.length !== 3) {
    note(place, `has ${value.length} members`, 'three numbers [x, y, z]');
    return TRIPLE_STAND_IN;
  }
  const coordinate = (index: 0 | 1 | 2): number =>
    readNumber({ value: value[index] as unknown, path: `${path}[${index}]`, faults }, range);
  return [coordinate(0), coordinate(1), coordinate(2)];
}

/** `, which looks like metres` for a number that would be allowed a thousand times larger; else nothing. */
export function largerUnitHint(value: number, range: Range): string {
  const unit = THOUSANDFOLD[range.unit];
  if (unit === undefined || value === 0 || !isWithin(1000 * value, range)) return '';
  return `, which looks like ${unit}`;
}

const isWithin = (value: number, { least, most }: Range): boolean =>
  value >= least && value <= most;

const rangeText = ({ least, most, unit }: Range): string =>
  `a number from ${least} to ${most}${unit === '' ? '' : ` ${unit}`}`;
