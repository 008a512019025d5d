import { describe, expect, test } from 'vitest';
import { systemLife } from '#core/bearing/system-life.ts';

// Tolerance: four decimals.
describe('two rows of one life', () => {
  test.each([
    { kind: 'ball', ratio: 0.5359, source: 'exponent 10/9: NTN and JTEKT handbooks (from memory)' },
    { kind: 'roller', ratio: 0.54, source: 'exponent 9/8: NTN and JTEKT handbooks (from memory)' },
  ] as const)('$kind: $ratio of that life ($source)', ({ kind, ratio }) => {
    const life = systemLife([
      { kind, life: 1 },
      { kind, life: 1 },
    ]);
    expect(Math.abs(life - ratio)).toBeLessThanOrEqual(5e-5);
  });
});

/**
 * Two like rows of balls that share a load live as one bearing with 2^0.7 = 1.62 times the rating: that the
 * catalogue's factor for a pair comes out of the exponent 10/9 confirms it. (Not so for rollers: there the
 * standard's 2^(7/9) for two rows gives a tenth more life than 9/8 with p = 10/3.)
 */
test('two rows of balls that share the load have the rating life of a catalogue’s pair', () => {
  const source = 'SKF, Rolling bearings, p. 402: C of a pair = 1.62 C of one (tpsbearing.com)';
  const row = { kind: 'ball', life: (1 / 0.5) ** 3 } as const;
  const pairRating = systemLife([row, row]) ** (1 / 3);
  // Printed with two decimals.
  expect(Math.abs(pairRating - 1.62), source).toBeLessThanOrEqual(0.005);
});
