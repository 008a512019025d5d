import { describe, expect, test } from 'vitest';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import type { FlotationTyre, MetricTyre, Tyre } from '#core/tyre/tyre.ts';

const plainMetric: MetricTyre = {
  kind: 'metric',
  use: 'passenger',
  sectionWidth_mm: 205,
  aspectRatio_percent: 55,
  rimCode: 16,
  construction: 'radial',
  forHighSpeed: false,
  fasterThanSymbol: false,
  extraLoad: false,
};

const plainFlotation: FlotationTyre = {
  kind: 'flotation',
  outerDiameter_in: 31,
  sectionWidth_in: 10.5,
  rimCode: 15,
  construction: 'radial',
  forHighSpeed: false,
  fasterThanSymbol: false,
  extraLoad: false,
};

describe('a size designation is read', () => {
  const rows: readonly (readonly [string, Tyre])[] = [
    ['205/55 R16', plainMetric],
    ['205/55R16', plainMetric],
    ['  205 / 55 r 16 ', plainMetric],
    ['205\u2044 55\u00a0R16', plainMetric],
    ['205/55 R16 91V', { ...plainMetric, loadIndex: 91, speedSymbol: 'V' }],
    ['205/55R16 91 v', { ...plainMetric, loadIndex: 91, speedSymbol: 'V' }],
    ['205/55R16 91', { ...plainMetric, loadIndex: 91 }],
    ['205/55R16 94W XL', { ...plainMetric, loadIndex: 94, speedSymbol: 'W', extraLoad: true }],
    [
      '205/55R16 94W Extra Load M+S',
      { ...plainMetric, loadIndex: 94, speedSymbol: 'W', extraLoad: true },
    ],
    ['205/55R16 91V TL', { ...plainMetric, loadIndex: 91, speedSymbol: 'V' }],
    ['205/55 ZR16', { ...plainMetric, forHighSpeed: true }],
    [
      '205/55ZR16 (91Y)',
      {
        ...plainMetric,
        forHighSpeed: true,
        loadIndex: 91,
        speedSymbol: 'Y',
        fasterThanSymbol: true,
      },
    ],
    ['P205/55R16', { ...plainMetric, use: 'P' }],
    ['HL 205/55 R16', { ...plainMetric, use: 'HL' }],
    [
      'T125/70 D15',
      {
        ...plainMetric,
        use: 'T',
        sectionWidth_mm: 125,
        aspectRatio_percent: 70,
        rimCode: 15,
        construction: 'diagonal',
      },
    ],
    ['205/55-16', { ...plainMetric, construction: 'diagonal' }],
    ['205/55 B16', { ...plainMetric, construction: 'bias-belted' }],
    [
      '225/70 R19.5',
      { ...plainMetric, sectionWidth_mm: 225, aspectRatio_percent: 70, rimCode: 19.5 },
    ],
    [
      'LT265/70R17 121/118S',
      {
        ...plainMetric,
        use: 'LT',
        sectionWidth_mm: 265,
        aspectRatio_percent: 70,
        rimCode: 17,
        loadIndex: 121,
        twinLoadIndex: 118,
        speedSymbol: 'S',
      },
    ],
    [
      '195/70 R15C 104/102R',
      {
        ...plainMetric,
        use: 'C',
        sectionWidth_mm: 195,
        aspectRatio_percent: 70,
        rimCode: 15,
        loadIndex: 104,
        twinLoadIndex: 102,
        speedSymbol: 'R',
      },
    ],
    [
      '195/70 R15 C',
      { ...plainMetric, use: 'C', sectionWidth_mm: 195, aspectRatio_percent: 70, rimCode: 15 },
    ],
    ['31x10.50R15LT', plainFlotation],
    ['31X10,50 R 15 LT', plainFlotation],
    ['31×10.50 R15', plainFlotation],
    ['31x10.50R15LT 109Q', { ...plainFlotation, loadIndex: 109, speedSymbol: 'Q' }],
  ];
  test.each(rows)('%s', (text, tyre) => {
    expect(parseTyre(text)).toEqual({ ok: true, value: tyre });
  });
});

describe('a size that cannot be is refused with what is allowed', () => {
  const rows: readonly (readonly [string, readonly string[]])[] = [
    ['', ['is missing']],
    ['205', ['is “205”']],
    ['205/R16', ['is “205/R16”']],
    ['206/55 R16', ['has the section width 206']],
    ['95/55 R16', ['has the section width 95']],
    ['205/57 R16', ['has the aspect ratio 57']],
    ['205/100 R16', ['has the aspect ratio 100']],
    ['205/55 R7', ['has the rim code 7']],
    ['205/55 R390', ['has the rim code 390']],
    ['205/55 R16.4', ['has the rim code 16.4']],
    ['205/55/16', ['has “/” before the rim code']],
    ['205/55 16', ['has no letter before the rim code']],
    ['205/55 X16', ['has “X” before the rim code']],
    ['X205/55 R16', ['starts with X']],
    ['C205/55 R16', ['starts with C']],
    ['P205/55 R16C', ['has P in front and C behind']],
    ['205/55 R16 59V', ['has the load index 59']],
    ['205/55 R16 131V', ['has the load index 131']],
    ['205/55 R16 121/131S', ['has the load index 131']],
    ['205/55 R16 91Z', ['has the speed symbol Z']],
    ['205/55 R16 (91Y', ['has one bracket without the other']],
    ['205/55 R16 91V fast', ['has “FAST” behind the size']],
    ['15x4.50R8', ['has the outer diameter 15', 'has the section width 4.5']],
    ['20x10.50R18', ['has the outer diameter 20 on the rim code 18']],
    [
      '206/57 X7 59Z',
      [
        'has the section width 206',
        'has the aspect ratio 57',
        'has “X” before the rim code',
        'has the rim code 7',
        'has the load index 59',
        'has the speed symbol Z',
      ],
    ],
  ];
  test.each(rows)('%s', (text, wrong) => {
    const outcome = parseTyre(text, 'wheel.tyre');
    const faults = outcome.ok ? [] : outcome.faults;
    expect(faults.map((fault) => fault.wrong)).toEqual(wrong);
    for (const fault of faults) {
      expect(fault.path).toBe('wheel.tyre');
      expect(fault.allowed).not.toBe('');
    }
  });
});
