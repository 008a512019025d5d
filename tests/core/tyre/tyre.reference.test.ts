import { describe, expect, test } from 'vitest';
import { compareTyres, trueSpeed } from '#core/tyre/compare.ts';
import {
  codedOuterDiameter,
  outerDiameter,
  sectionHeight,
  sectionWidth,
} from '#core/tyre/dimensions.ts';
import { loadCapacity_kg } from '#core/tyre/load-index.ts';
import { loadedRadius } from '#core/tyre/loaded-radius.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { rollingCircumference } from '#core/tyre/rolling.ts';
import { ratedSpeed, type SpeedSymbol } from '#core/tyre/speed-symbol.ts';
import type { MetricTyre, Tyre } from '#core/tyre/tyre.ts';
import { fromSI } from '#core/units/convert.ts';

function tyre(text: string): Tyre {
  const outcome = parseTyre(text);
  if (!outcome.ok) throw new Error(`${text} is a good size`);
  return outcome.value;
}

function metricTyre(text: string): MetricTyre {
  const read = tyre(text);
  if (read.kind !== 'metric') throw new Error(`${text} is a metric size`);
  return read;
}

describe('outer diameter, exact', () => {
  const sum = '25.4·code + 2·width·aspect ratio by hand';
  const rows: readonly { size: string; mm: number; source: string }[] = [
    { size: '245/55 R18', mm: 726.7, source: 'barretire.com/Tires/tiresizes.htm, worked example' },
    { size: '205/55 R16', mm: 631.9, source: sum },
    { size: '175/70 R13', mm: 575.2, source: sum },
    { size: '175/70 R14', mm: 600.6, source: sum },
    { size: '185/65 R15', mm: 621.5, source: sum },
    { size: '195/65 R15', mm: 634.5, source: sum },
    { size: '215/45 R17', mm: 625.3, source: sum },
    { size: '225/45 R17', mm: 634.3, source: sum },
    { size: '225/40 R18', mm: 637.2, source: sum },
    { size: '235/60 R18', mm: 739.2, source: sum },
    { size: '255/35 R19', mm: 661.1, source: sum },
  ];
  // Tolerance: none but rounding in binary; the decimals are exact.
  test.each(rows)('$size: $mm mm', ({ size, mm }) => {
    expect(fromSI(outerDiameter(tyre(size)), 'mm')).toBeCloseTo(mm, 10);
  });

  test('a flotation size says it in inches', () => {
    // Source: 2ndhandtyresales.com.au/blog/1425: 31×10.50R15 is 31" across, 10.50" wide.
    const size = tyre('31x10.50R15LT');
    expect(fromSI(outerDiameter(size), 'in')).toBeCloseTo(31, 12);
    expect(fromSI(sectionWidth(size), 'in')).toBeCloseTo(10.5, 12);
    expect(fromSI(sectionHeight(size), 'in')).toBeCloseTo(8, 12);
  });
});

test('the section of 205/55 is 112.75 mm high', () => {
  // Source: oponeo.co.uk/tyres/205-55-r16. Tolerance: rounding in binary.
  expect(fromSI(sectionHeight(tyre('205/55 R16')), 'mm')).toBeCloseTo(112.75, 10);
});

describe('outer diameter, as the standards round it', () => {
  const rule = 'UN Regulation 30, paragraph 6.1.2, rule from memory, by hand';
  const table = 'ETRTO Standards Manual, passenger car tyres, design overall diameter, from memory';
  const rows: readonly { size: string; mm: number; source: string }[] = [
    { size: '185/65 R15', mm: 621, source: rule },
    { size: '195/65 R15', mm: 635, source: table },
    { size: '205/55 R16', mm: 632, source: table },
    { size: '215/45 R17', mm: 626, source: table },
    { size: '225/45 R17', mm: 634, source: table },
    { size: '225/40 R18', mm: 637, source: table },
    { size: '235/60 R18', mm: 739, source: rule },
    { size: '245/55 R18', mm: 727, source: rule },
    { size: '255/35 R19', mm: 661, source: rule },
    // Section heights that end in a half, 122.5 and 129.5 mm: rounded up.
    { size: '175/70 R13', mm: 576, source: table },
    { size: '175/70 R14', mm: 602, source: table },
    { size: '185/70 R14', mm: 616, source: table },
  ];
  // Tolerance: none, whole millimetres.
  test.each(rows)('$size: $mm mm', ({ size, mm }) => {
    expect(fromSI(codedOuterDiameter(metricTyre(size)), 'mm')).toBeCloseTo(mm, 10);
  });

  test.each([
    ...[
      [12, 305],
      [13, 330],
      [14, 356],
      [15, 381],
      [16, 406],
      [17, 432],
      [18, 457],
      [19, 483],
    ],
    ...[
      [20, 508],
      [21, 533],
      [22, 559],
      [24, 610],
      [16.5, 419],
      [17.5, 445],
      [19.5, 495],
    ],
  ])('rim code %d stands for %d mm', (code = 0, mm = 0) => {
    // Source: UN Regulations 30 and 54, nominal rim diameter d, from memory.
    const height_mm = 2 * 41; // 205/20
    const size = metricTyre(`205/20 R${code}`);
    expect(fromSI(codedOuterDiameter(size), 'mm')).toBeCloseTo(mm + height_mm, 10);
  });
});

describe('estimates hold what was measured or tabulated', () => {
  const rows: readonly { size: string; what: string; mm: number; source: string }[] = [
    {
      size: '205/55 R16',
      what: 'circumference',
      mm: 1928,
      source: 'ETRTO / WdK tables, from memory',
    },
    {
      size: '185/70 R13',
      what: 'circumference',
      mm: 1_609_344 / 881,
      source: '7-dna.com/eugene/suspension.html: 881 rev/mile from a tyre data book',
    },
    {
      size: '185/60 R13',
      what: 'circumference',
      mm: 1_609_344 / 954,
      source: '7-dna.com/eugene/suspension.html: 954 rev/mile from a tyre data book',
    },
    {
      size: '205/55 R16',
      what: 'loaded radius',
      mm: 290,
      source: 'ETRTO / WdK tables, from memory',
    },
  ];
  test.each(rows)('$what of $size: $mm mm', ({ size, what, mm }) => {
    const estimate =
      what === 'circumference' ? rollingCircumference(tyre(size)) : loadedRadius(tyre(size));
    // Tolerance: the stated range itself.
    expect(fromSI(estimate.least, 'mm')).toBeLessThan(mm);
    expect(fromSI(estimate.most, 'mm')).toBeGreaterThan(mm);
  });

  test('205/55 R16 rolls 1927 mm in one turn, about 519 turns in a kilometre', () => {
    // Source: 3.05·631.9 mm by hand.
    const { value } = rollingCircumference(tyre('205/55 R16'));
    expect(fromSI(value, 'mm')).toBeCloseTo(1927.295, 9);
    expect(Math.round(1000 / value)).toBe(519);
  });
});

describe('another tyre', () => {
  test('175/65 R14 in place of 175/70 R13: 7.9 mm more, and 100 km/h shown are 101.37', () => {
    // Source: 583.1 mm and 575.2 mm by hand, and their quotient. Tolerance: half of the last digit.
    const change = compareTyres(tyre('175/70 R13'), tyre('175/65 R14'));
    expect(Math.abs(fromSI(change.outerDiameter, 'mm') - 7.9)).toBeLessThan(0.05);
    const shown = trueSpeed(100, tyre('175/70 R13'), tyre('175/65 R14'));
    expect(Math.abs(shown - 101.37)).toBeLessThan(0.005);
  });

  test('P205/75R14 in place of P185/75R14 goes 1.05 times as far in one turn: 63 mph at 60 shown', () => {
    // Source: qammunity.org/3145382, worked exercise. Tolerance: half of the last digit.
    const change = compareTyres(tyre('P185/75R14'), tyre('P205/75R14'));
    expect(Math.abs(change.trueSpeedPerShown - 1.05)).toBeLessThan(0.005);
    expect(Math.round(60 * change.trueSpeedPerShown)).toBe(63);
  });
});

describe('load index', () => {
  // Source: ISO 4000-1 / UN Regulation 30 annex 4 as reprinted at barretire.com/Tires/tiresizes.htm
  // (71 to 110) and boosttown.com/wheels_tyres/tyre_load_index.php (60 to 119; its 165 for 62 is a
  // misprint of 265, see trailermedic.co.uk/load-index), and in a tyre maker's chart (75 to 150).
  const tens: readonly (readonly [number, readonly number[]])[] = [
    [60, [250, 257, 265, 272, 280, 290, 300, 307, 315, 325]],
    [70, [335, 345, 355, 365, 375, 387, 400, 412, 425, 437]],
    [80, [450, 462, 475, 487, 500, 515, 530, 545, 560, 580]],
    [90, [600, 615, 630, 650, 670, 690, 710, 730, 750, 775]],
    [100, [800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030]],
    [110, [1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360]],
    [120, [1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850]],
  ];
  test.each(tens)('from %d on', (first, loads) => {
    expect(loads.map((_, step) => loadCapacity_kg(first + step))).toEqual(loads);
  });

  test('every load is within 1.8 % of 45·10^(index/80), the series behind the table', () => {
    // Source: regularity of the table itself, whose loads are rounded to 5 to 50 kg. Guards against a slip
    // of typing in both places at once.
    for (let index = 60; index <= 130; index++) {
      const ratio = loadCapacity_kg(index) / (45 * 10 ** (index / 80));
      expect(Math.abs(ratio - 1)).toBeLessThan(0.018);
    }
  });

  test.each([59, 131, 91.5, -1, NaN])('there is none for %d', (index) => {
    expect(() => loadCapacity_kg(index)).toThrow(/allowed: 60 to 130/);
  });
});

describe('speed symbols', () => {
  // Source: jaxtyres.com.au/knowledge/tyres/tyre-speed-rating, table (after UN Regulation 30).
  const rows: readonly (readonly [SpeedSymbol, number])[] = [
    ...([
      ['F', 80],
      ['G', 90],
      ['J', 100],
      ['K', 110],
      ['L', 120],
      ['M', 130],
      ['N', 140],
    ] as const),
    ...([
      ['P', 150],
      ['Q', 160],
      ['R', 170],
      ['S', 180],
      ['T', 190],
      ['U', 200],
      ['H', 210],
    ] as const),
    ...([
      ['V', 240],
      ['W', 270],
      ['Y', 300],
    ] as const),
  ];
  test.each(rows)('%s is %d km/h', (symbol, kmh) => {
    expect(fromSI(ratedSpeed(symbol), 'km/h')).toBeCloseTo(kmh, 10);
  });
});
