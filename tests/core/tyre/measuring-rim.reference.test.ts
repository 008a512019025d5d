import { expect, test } from 'vitest';
import { measuringRim, sectionOnRim } from '#core/tyre/measuring-rim.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { valueOf } from '../example-corner.ts';

const source = 'Tables of ISO 4000-1 and of tyre makers (from memory)';

/** Measuring rims in inches: exact, in half inches. */
const ROWS = [
  ['205/55 R16', 6.5],
  ['225/45 R17', 7.5],
  ['195/65 R15', 6],
  ['265/70 R16', 8],
  ['185/65 R15', 5.5],
  ['245/40 R18', 8.5],
  ['155/80 R13', 4.5],
] as const;

test.each(ROWS)(`%s is measured on a rim of %d inches (${source})`, (text, rim_in) => {
  const tyre = valueOf(parseTyre(text));
  if (tyre.kind !== 'metric') throw new RangeError('a metric tyre');
  expect(measuringRim(tyre) / 0.0254).toBeCloseTo(rim_in, 9);
  expect(sectionOnRim(tyre, rim_in * 0.0254)).toBeCloseTo(tyre.sectionWidth_mm / 1000, 9);
});

test('half an inch more rim makes a tyre 5 mm wider; a flotation tyre is taken as marked', () => {
  expect(sectionOnRim(valueOf(parseTyre('205/55 R16')), 7 * 0.0254)).toBeCloseTo(0.21, 9);
  expect(sectionOnRim(valueOf(parseTyre('31x10.50 R15 LT')), 0.2)).toBeCloseTo(10.5 * 0.0254, 9);
});
