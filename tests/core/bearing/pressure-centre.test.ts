import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { pressureCentre, pressureCentreSpread, rowPitch } from '#core/bearing/pressure-centre.ts';

test('without a contact angle the pressure centre is the middle of the row', () => {
  expect(pressureCentre(0.016, 0.046, 0)).toBe(0.008);
  expect(pressureCentreSpread(0.03, 0.046, 0)).toBe(0.03);
});

test('two single rows back to back spread by twice their pressure-centre distance', () => {
  const spread = pressureCentreSpread(0.016, 0.046, radians(40));
  expect(spread).toBeCloseTo(2 * pressureCentre(0.016, 0.046, radians(40)), 12);
});

test('the row pitch comes back from the spread', () => {
  const spread = pressureCentreSpread(0.0256, 0.052, radians(35));
  expect(rowPitch(spread, 0.052, radians(35))).toBeCloseTo(0.0256, 12);
});
