import { expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { pressureCentre } from '#core/bearing/pressure-centre.ts';

test('a catalogue’s angular contact ball bearing 7206-B has its pressure centre at 27.3 mm', () => {
  const source = 'data sheet of 7206-B: d 30, D 62, B 16, a 27.3 mm, 40 degrees (fgfa.com.cn)';
  const a = pressureCentre(0.016, (0.03 + 0.062) / 2, radians(40));
  // Printed with one decimal of a millimetre.
  expect(Math.abs(1000 * a - 27.3), source).toBeLessThanOrEqual(0.05);
});
