import { describe, expect, test } from 'vitest';
import { convertible, DIMENSIONS, type Dimension } from '#core/units/dimension.ts';
import { findUnit, SPELLINGS } from '#core/units/find-unit.ts';
import { lettersWrong, suggestUnit } from '#core/units/suggest-unit.ts';
import { UNIT_NAMES, UNITS, unitsOf, type UnitName } from '#core/units/units.ts';

const dimensions = Object.keys(DIMENSIONS) as readonly Dimension[];

describe('the table', () => {
  test('has at least two units of every dimension, and the first one offered is a metric one', () => {
    expect(dimensions.map((dimension) => unitsOf(dimension)[0])).toEqual([
      'mm',
      'km',
      'deg',
      'N',
      'Nm',
      'kg',
      'rev',
      'bar',
      'km/h',
      'ratio',
    ]);
    for (const dimension of dimensions) expect(unitsOf(dimension).length).toBeGreaterThan(1);
  });

  test('gives no spelling to two units, but for the prime and the double prime', () => {
    const shared = [...SPELLINGS].filter(([, names]) => names.length > 1);
    expect(shared).toEqual([
      ['"', ['in', 'arcsec']],
      ["'", ['ft', 'arcmin']],
    ]);
  });

  test('converts a length into a distance, and otherwise only what has one dimension', () => {
    const mixed = dimensions.flatMap((a) =>
      dimensions.filter((b) => a !== b && convertible(a, b)).map((b) => `${a} ${b}`),
    );
    expect(mixed).toEqual(['length distance', 'distance length']);
  });
});

describe('a unit is found', () => {
  test.each(UNIT_NAMES.filter((name) => UNITS[name].symbol !== ''))('%s by its symbol', (name) => {
    expect(findUnit(UNITS[name].symbol, UNITS[name].dimension)).toBe(name);
  });

  test.each(
    UNIT_NAMES.flatMap((name) => UNITS[name].aliases.map((alias) => [name, alias] as const)),
  )('%s by its alias %s, in small letters and in capitals', (name, alias) => {
    const { dimension } = UNITS[name];
    expect(findUnit(alias, dimension)).toBe(name);
    expect(findUnit(alias.toLowerCase(), dimension)).toBe(name);
    expect(findUnit(alias.toUpperCase(), dimension)).toBe(name);
  });

  const spellings: readonly (readonly [UnitName, readonly string[]])[] = [
    ['Nm', ['Nm', 'N m', 'N·m', 'N⋅m', 'N*m', 'N-m', 'N.m', 'nm', 'NM', 'newton metres']],
    ['Nm', ['Newton-meters', 'N\u202fm', ' N m ']],
    [
      'lbf-ft',
      ['lb·ft', 'ft-lb', 'lbf·ft', 'ft-lbf', 'lb ft', 'ft.lb', 'ft lbs', 'lbs-ft', 'ft·lbs.'],
    ],
    ['lbf-ft', ['foot-pounds', 'pound feet', 'FT-LB', 'lb\u2011ft', 'ftlbs']],
    ['lbf-in', ['in-lb', 'lbf in', 'inch pounds', 'in.lbs', 'lb-in']],
    ['mm', ['MM', 'millimeters', 'millimetres', 'mm.']],
    ['in', ['in.', 'inch', 'Inches', '″', '"', '”', "''", '′′']],
    ['ft', ['′', "'", 'feet', 'Foot']],
    ['m', ['meter', 'metres', 'M']],
    ['lb', ['lbs', 'lbs.', 'Pounds', 'lbm']],
    ['km/h', ['km / h', 'kph', 'KM/H', 'kmh', 'km/hr']],
    ['mph', ['MPH', 'miles per hour', 'mi/h']],
    ['psi', ['PSI', 'lb/in²', 'lbf/in^2']],
    ['percent', ['%', 'per cent', 'pct', '％']],
    ['ratio', [':1', ': 1', 'to 1']],
    ['rev', ['revs', 'revolutions', 'turns']],
    ['Mrev', ['million revolutions', 'mrev', 'M rev']],
  ];
  test.each(spellings)('%s as %s', (name, written) => {
    for (const text of written)
      expect([text, findUnit(text, UNITS[name].dimension)]).toEqual([text, name]);
  });

  test('by the wanted dimension where a mark has two meanings', () => {
    expect(findUnit('′', 'angle')).toBe('arcmin');
    expect(findUnit('′', 'length')).toBe('ft');
    expect(findUnit('″', 'angle')).toBe('arcsec');
    expect(findUnit('″', 'distance')).toBe('in');
  });

  test('even of another dimension, so that the message can name it', () => {
    expect(findUnit('kN', 'length')).toBe('kN');
  });

  test.each(['', ' ', '·', 'furlong', 'mmm', 'N·m·m', 'constructor', '__proto__'])(
    'not for %j',
    (text) => {
      expect(findUnit(text, 'length')).toBeUndefined();
    },
  );
});

describe('a mistyped unit', () => {
  const near: readonly (readonly [string, Dimension, UnitName])[] = [
    ['mmm', 'length', 'mm'],
    ['inhc', 'length', 'in'],
    ['kmm', 'length', 'mm'],
    ['kmm', 'distance', 'km'],
    ['newtonn', 'force', 'N'],
    ['lbd·ft', 'moment', 'lbf-ft'],
    ['degre', 'angle', 'deg'],
    ['psj', 'pressure', 'psi'],
    ['kmph', 'speed', 'km/h'],
    ['present', 'ratio', 'percent'],
  ];
  test.each(near)('%s in a field for %s suggests %s', (written, wanted, name) => {
    expect(suggestUnit(written, wanted)).toBe(name);
  });

  test('with nothing near gets no suggestion', () => {
    expect(suggestUnit('furlong', 'length')).toBeUndefined();
    expect(suggestUnit('x', 'length')).toBeUndefined();
  });

  test('gets no suggestion that the field would refuse', () => {
    expect(suggestUnit('parsec', 'distance')).toBeUndefined();
    expect(suggestUnit('parsec', 'angle')).toBe('arcsec');
  });

  test('is compared by letters put in, left out, replaced or swapped', () => {
    expect(lettersWrong('inch', 'inch')).toBe(0);
    expect(lettersWrong('inhc', 'inch')).toBe(1);
    expect(lettersWrong('ich', 'inch')).toBe(1);
    expect(lettersWrong('', 'inch')).toBe(4);
    expect(lettersWrong('kitten', 'sitting')).toBe(3);
  });
});
