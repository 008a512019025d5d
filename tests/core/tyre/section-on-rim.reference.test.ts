import { expect, test } from 'vitest';
import { sectionGain } from '#core/tyre/section-on-rim.ts';

/** Rim width gained in inches, and what the section gains in millimetres. */
const ROWS = [
  {
    rim_in: 0.5,
    section_mm: 5,
    // Said as "about": half of the last digit.
    tolerance_mm: 0.5,
    source: 'tyre maker’s technical page, change of section width with rim width',
  },
  {
    rim_in: 1,
    section_mm: 10,
    tolerance_mm: 1,
    source: 'the same, twice over',
  },
];

test.each(ROWS)('a rim $rim_in in wider spreads a tyre by $section_mm mm', (row) => {
  const gain_mm = 1000 * sectionGain(row.rim_in * 0.0254);
  expect(Math.abs(gain_mm - row.section_mm)).toBeLessThanOrEqual(row.tolerance_mm);
});
