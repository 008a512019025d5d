import { expect, test } from 'vitest';
import { meanLoad } from '#core/bearing/duty.ts';

test('the mean load of a textbook’s three steps is 597 lb', () => {
  const source = 'Mott, Machine Elements in Mechanical Design, 4th ed., example 14-6, p. 626';
  const steps = [
    { share: 30 / 60, load: 650 },
    { share: 10 / 60, load: 750 },
    { share: 20 / 60, load: 250 },
  ];
  // Printed in whole pounds; the unit cancels.
  expect(Math.abs(meanLoad(steps, 3) - 597), source).toBeLessThanOrEqual(0.5);
});

/** A load that changes steadily is a duty cycle of many short steps. */
const STEPS = 20_000;
const changing = (load: (part: number) => number): number =>
  meanLoad(
    Array.from({ length: STEPS }, (_, i) => ({ share: 1 / STEPS, load: load((i + 0.5) / STEPS) })),
    3,
  );

const NSK = 'NSK and NTN handbooks, average of fluctuating load (from memory)';

// Tolerance: the handbooks' rules are rounded. Their rule for a load that rises in a straight line,
// (F_min + 2 F_max)/3, is left out: it lies up to 8 % above the mean it stands for.
test.each([
  {
    name: 'a full sine from no load to full load',
    load: (part: number) => 0.5 - 0.5 * Math.cos(2 * Math.PI * part),
    mean: 0.65,
    tolerance: 0.035,
    source: NSK,
  },
  {
    name: 'the arches of a rectified sine',
    load: (part: number) => Math.sin(Math.PI * part),
    mean: 0.75,
    tolerance: 0.005,
    source: NSK,
  },
])('$name: $mean of full load ($source)', ({ load, mean, tolerance }) => {
  expect(Math.abs(changing(load) - mean)).toBeLessThanOrEqual(tolerance);
});
