import { expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';

test('half a turn is π', () => {
  expect(radians(180)).toBe(Math.PI);
  expect(degrees(Math.PI)).toBe(180);
});
