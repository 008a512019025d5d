import type { Dimension } from './dimension.ts';

export interface Unit {
  readonly dimension: Dimension;
  /** As it is written behind a number. Empty for a bare ratio. */
  readonly symbol: string;
  /**
   * The SI value of one unit is multiply/divide, two numbers that binary floating point holds exactly
   * (but for π), so that 58.18 mm becomes the very number nearest to 0.05818 m.
   */
  readonly multiply: number;
  readonly divide: number;
  /**
   * Other ways to write it, besides the symbol. Case, plural s, metre or meter, and the sign between
   * two factors (`N·m`, `N m`, `N-m`, `N*m`) need no entry of their own: see find-unit.ts.
   */
  readonly aliases: readonly string[];
}

/**
 * The closed table of units that people may type or read.
 *
 * Exact definitions: inch 25.4 mm, pound 0.45359237 kg (international yard and pound, 1959), standard
 * gravity 9.80665 m/s² (CGPM 1901), hence lbf = 4.4482216152605 N; NIST SP 811 appendix B (from memory).
 */
export const UNITS = {
  mm: unit('length', 'mm', 1, 1000, 'millimetre'),
  cm: unit('length', 'cm', 1, 100, 'centimetre'),
  m: unit('length', 'm', 1, 1, 'metre'),
  in: unit('length', 'in', 254, 10_000, 'inch', 'inches', '"'),
  ft: unit('length', 'ft', 3048, 10_000, 'foot', 'feet', "'"),

  km: unit('distance', 'km', 1000, 1, 'kilometre'),
  mi: unit('distance', 'mi', 1_609_344, 1000, 'mile'),

  deg: unit('angle', '°', Math.PI, 180, 'deg', 'degree'),
  /** Counted like decimal degrees; a field with this unit shows 1.5 as 1°30′. */
  'deg-min': unit('angle', '° ′', Math.PI, 180),
  arcmin: unit('angle', '′', Math.PI, 180 * 60, "'", 'arcmin', 'min', 'minute', 'arc minute'),
  arcsec: unit('angle', '″', Math.PI, 180 * 3600, '"', 'arcsec', 'sec', 'second', 'arc second'),
  rad: unit('angle', 'rad', 1, 1, 'radian'),

  N: unit('force', 'N', 1, 1, 'newton'),
  kN: unit('force', 'kN', 1000, 1, 'kilonewton'),
  lbf: unit('force', 'lbf', 44_482_216_152_605, 1e13, 'pound-force'),

  Nm: unit('moment', 'N·m', 1, 1, 'Nm', 'newton metre'),
  // 13 558 179 483 314 004 (× 10⁻¹⁶) passes 2⁵³; a quarter of it over a quarter of 10¹⁶ does not.
  'lbf-ft': unit(
    'moment',
    'lbf·ft',
    3_389_544_870_828_501,
    25e14,
    ...['lb·ft', 'ft·lbf', 'ft·lb', 'lbft', 'ftlb', 'lbfft', 'ftlbf'],
    ...['foot-pound', 'pound-foot', 'pound-feet', 'pound-force foot'],
  ),
  'lbf-in': unit(
    'moment',
    'lbf·in',
    1_129_848_290_276_167,
    1e16,
    ...['lb·in', 'in·lbf', 'in·lb', 'lbin', 'inlb', 'lbfin', 'inlbf'],
    ...['inch-pound', 'pound-inch', 'pound-force inch'],
  ),

  kg: unit('mass', 'kg', 1, 1, 'kilogram', 'kilogramme', 'kilo'),
  lb: unit('mass', 'lb', 45_359_237, 1e8, 'lbm', 'pound'),

  rev: unit('revolutions', 'rev', 1, 1, 'revolution', 'turn'),
  Mrev: unit('revolutions', 'Mrev', 1e6, 1, 'M rev', 'million rev', 'million revolution'),

  bar: unit('pressure', 'bar', 1e5, 1),
  kPa: unit('pressure', 'kPa', 1000, 1, 'kilopascal'),
  // lbf/in²: 4.4482216152605/0.0254² with both sides multiplied by 10¹³.
  psi: unit('pressure', 'psi', 44_482_216_152_605, 6_451_600_000, 'lbf/in^2', 'lb/in^2'),

  'km/h': unit('speed', 'km/h', 10, 36, 'kmh', 'kph', 'km/hr'),
  mph: unit('speed', 'mph', 44_704, 100_000, 'mi/h', 'mile per hour'),
  'm/s': unit('speed', 'm/s', 1, 1, 'metre per second'),

  ratio: unit('ratio', '', 1, 1, 'ratio', ':1', 'to 1'),
  percent: unit('ratio', '%', 1, 100, 'percent', 'per cent', 'pct'),
} as const satisfies Record<string, Unit>;

export type UnitName = keyof typeof UNITS;

export const UNIT_NAMES = Object.keys(UNITS) as readonly UnitName[];

/** The units of one dimension, in the order in which they are offered. */
export const unitsOf = (dimension: Dimension): readonly UnitName[] =>
  UNIT_NAMES.filter((name) => UNITS[name].dimension === dimension);

function unit(
  dimension: Dimension,
  symbol: string,
  multiply: number,
  divide: number,
  ...aliases: readonly string[]
): Unit {
  return { dimension, symbol, multiply, divide, aliases };
}
