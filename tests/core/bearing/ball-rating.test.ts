import { describe, expect, test } from 'vitest';
import { ballRating, geometryFactor } from '#core/bearing/ball-rating.ts';

const set = { rows: 1, balls: 13, ballDiameter: 0.01, pitchDiameter: 0.05, contactAngle: 0.6 };

describe('ball rating', () => {
  test('of two rows is 2^0.7 times that of one', () => {
    expect(ballRating({ ...set, rows: 2 }) / ballRating(set)).toBeCloseTo(2 ** 0.7, 12);
  });

  test('passes from small to large balls without a step worth the name', () => {
    const at = (ballDiameter: number): number =>
      ballRating({ ...set, ballDiameter, pitchDiameter: 0.1 });
    expect(at(0.025401) / at(0.0254)).toBeCloseTo(1, 3);
  });
});

test.each([0, -0.1, 0.41, Number.NaN])('balls of %f have no geometry factor', (slenderness) => {
  expect(() => geometryFactor(slenderness)).toThrow(RangeError);
});
