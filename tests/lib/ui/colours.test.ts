import {
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  filterGrayscale,
  interpolate,
  wcagContrast,
  type Colour,
} from 'culori';
import { describe, expect, test } from 'vitest';
import { SCHEMES } from './tokens.ts';

/** WCAG 2.2, 1.4.3 for text and 1.4.11 for what must be seen to understand a figure. */
const TEXT_CONTRAST = 4.5;
const LINE_CONTRAST = 3;

/** CIEDE2000. Two tints side by side differ at about 2; lines apart on a page need a good deal more. */
const CLEARLY_OTHER = 12;

/** What text stands on. */
const GROUNDS = ['paper', 'sheet', 'tint', 'good', 'warn'];

/** The colour of each role of a drawing. */
const ROLES = ['axis', 'wheel', 'force', 'lever', 'bearing', 'ink'];

/** Full deficiency; whoever sees more colour sees more difference. */
const SEEN = {
  'with full colour vision': (colour: string): string | Colour => colour,
  'without red cones': filterDeficiencyProt(1),
  'without green cones': filterDeficiencyDeuter(1),
  'without blue cones': filterDeficiencyTrit(1),
  'in grey': filterGrayscale(1),
};

/**
 * Pairs that lightness alone does not tell apart, reviewed: in grey, and in print, roles are known by how they
 * are drawn. The axis is a heavy chain line with ringed points, the wheel an outline, a force an arrow, a lever a
 * solid band, the bearing small filled shapes; ink draws parts, dimensions and the road.
 */
const TOLD_APART_BY_SHAPE = {
  light:
    'axis/wheel axis/force axis/bearing axis/ink wheel/force wheel/lever wheel/bearing wheel/ink ' +
    'force/lever bearing/ink',
  dark: 'axis/wheel axis/force axis/lever wheel/force wheel/lever force/lever lever/bearing bearing/ink',
};

const difference = differenceCiede2000();

describe.each(SCHEMES)('in the $scheme scheme', ({ scheme, of }) => {
  /** A colour that covers another only in part. */
  const over = (colour: string, ground: string, share: number): Colour =>
    interpolate([of(ground), of(colour)], 'rgb')(share);

  test.each(['ink', 'soft'])('%s can be read on every ground', (text) => {
    for (const ground of GROUNDS) {
      expect(wcagContrast(of(text), of(ground)), ground).toBeGreaterThanOrEqual(TEXT_CONTRAST);
    }
  });

  test.each(['axis', 'force', 'lever'])('%s can be read as words in a drawing', (role) => {
    expect(wcagContrast(of(role), of('sheet'))).toBeGreaterThanOrEqual(TEXT_CONTRAST);
  });

  test('the words of the main button can be read on it', () => {
    expect(wcagContrast(of('paper'), of('ink'))).toBeGreaterThanOrEqual(TEXT_CONTRAST);
  });

  test.each(ROLES)('lines in %s stand out from the sheet, the wheel and the parts', (role) => {
    // Wheel and parts are filled with so much of their own colour.
    const grounds = {
      sheet: of('sheet'),
      wheel: over('wheel', 'sheet', 0.09),
      part: over('ink', 'sheet', 0.1),
    };
    for (const [name, ground] of Object.entries(grounds)) {
      expect(wcagContrast(of(role), ground), name).toBeGreaterThanOrEqual(LINE_CONTRAST);
    }
  });

  test('the band of a lever, which lets things through, still stands out', () => {
    const band = over('lever', 'sheet', Number(of('band')));
    expect(wcagContrast(band, of('sheet'))).toBeGreaterThanOrEqual(LINE_CONTRAST);
  });

  test.each(['axis', 'wheel'])('the %s before the change is pale, but not too pale', (role) => {
    const pale = over(role, 'sheet', Number(of('pale')));
    const contrast = wcagContrast(pale, of('sheet'));
    expect(contrast).toBeGreaterThanOrEqual(LINE_CONTRAST);
    expect(contrast).toBeLessThan(0.7 * wcagContrast(of(role), of('sheet')));
  });

  test.each(Object.entries(SEEN))('only reviewed pairs of roles look alike %s', (seen, filter) => {
    const alike = pairs(ROLES).filter(
      ([a, b]) => difference(filter(of(a)), filter(of(b))) < CLEARLY_OTHER,
    );
    const reviewed = seen === 'in grey' ? TOLD_APART_BY_SHAPE[scheme] : '';
    expect(alike.map((pair) => pair.join('/')).join(' ')).toBe(reviewed);
  });
});

const pairs = (roles: readonly string[]): readonly (readonly [string, string])[] =>
  roles.flatMap((a, i) => roles.slice(i + 1).map((b) => [a, b] as const));
