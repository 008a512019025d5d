import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { ballRating, geometryFactor } from '#core/bearing/ball-rating.ts';

/** f_c for D_w cos α/D_pw = 0.01, 0.02 … 0.40. */
const TABLE = {
  source:
    'ISO 281:2007, Table 2, single-row and angular contact groove ball bearings (from memory)',
  factors: [
    29.1, 35.8, 40.3, 43.8, 46.7, 49.1, 51.1, 52.8, 54.3, 55.5, 56.6, 57.5, 58.2, 58.8, 59.3, 59.6,
    59.8, 59.9, 60.0, 59.9, 59.8, 59.6, 59.3, 59.0, 58.6, 58.2, 57.7, 57.1, 56.6, 56.0, 55.3, 54.6,
    53.9, 53.2, 52.4, 51.7, 50.9, 50.0, 49.2, 48.4,
  ],
};

describe(`geometry factor (${TABLE.source})`, () => {
  // Tolerance: half a unit of the last digit printed.
  test.each(TABLE.factors.map((factor, i) => ({ slenderness: (i + 1) / 100, factor })))(
    '$slenderness: $factor',
    ({ slenderness, factor }) => {
      expect(Math.abs(geometryFactor(slenderness) - factor)).toBeLessThanOrEqual(0.05);
    },
  );
});

describe('ball rating', () => {
  // Tolerance 0.3 %: catalogues round to three digits. Another maker prints 22 500 N for the 7206-B.
  test.each([
    {
      name: '6208',
      set: {
        rows: 1,
        balls: 9,
        ballDiameter: 0.011906,
        pitchDiameter: 0.06,
        contactAngle: 0,
      },
      rating: 29_100,
      source: 'NSK catalogue and geometry of 6208 (from memory)',
    },
    {
      name: '7206 B',
      set: {
        rows: 1,
        balls: 13,
        ballDiameter: 0.009525,
        pitchDiameter: 0.046,
        contactAngle: radians(40),
      },
      rating: 20_500,
      source: 'NSK catalogue and geometry of 7206 B (from memory)',
    },
  ])('$name: $rating N ($source)', ({ set, rating }) => {
    expect(Math.abs(ballRating(set) / rating - 1)).toBeLessThanOrEqual(0.003);
  });
});
