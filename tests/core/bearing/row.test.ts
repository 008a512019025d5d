import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { bearingRow } from '#core/bearing/row.ts';

test('a row carries the load factors of its contact angle', () => {
  expect(bearingRow('ball', 27e3, radians(35))).toEqual({
    ok: true,
    value: {
      kind: 'ball',
      dynamicRating: 27e3,
      contactAngle: radians(35),
      factors: { e: 0.95, X: 0.37, Y: 0.66 },
    },
  });
});

test('a contact angle without load factors is a fault, since a person may have typed it', () => {
  expect(bearingRow('ball', 27e3, radians(15)).ok).toBe(false);
});

test.each([0, -27e3, Number.NaN, Number.POSITIVE_INFINITY])(
  'a rating of %f N is a mistake in the program',
  (rating) => {
    expect(() => bearingRow('ball', rating, radians(35))).toThrow(RangeError);
  },
);
