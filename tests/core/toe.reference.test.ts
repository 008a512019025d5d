import { expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { angleForRod } from '#core/angle-for-rod.ts';
import type { Corner } from '#core/corner.ts';
import { vector } from '#core/vector.ts';
import { valueOf } from './example-corner.ts';

/** An upright axis, an arm straight back, a rod straight across: a plane four-bar of round numbers, in metres. */
const plane = (arm: number, rod: number): Pick<Corner, 'axis' | 'tieRod'> => ({
  axis: { point: vector(0, 0.6, 0.2), direction: vector(0, 0, 1) },
  tieRod: { outer: vector(-arm, 0.6, 0.2), inner: vector(-arm, 0.6 - rod, 0.2) },
});

const ROWS = [
  {
    what: 'arm 0.12 m, rod of 0.35 m lengthened by 1 mm',
    arm: 0.12,
    rod: 0.35,
    longer: 0.001,
    // x = 0.12 (1 − cos θ), y = 0.35 + 0.12 sin θ: x² + y² = 0.351², solved by hand to sin θ = 0.008333.
    angle_deg: 0.4775,
    tolerance: 0.0005,
    source: 'plane trigonometry, worked by hand',
  },
  {
    what: 'arm and rod of 1 m, rod lengthened to the diagonal of 3 by 4 less its reach',
    arm: 1,
    rod: 1,
    // The outer end goes to (−cos 90°, 0.6 + sin 90°) = (0, 1.6): from (−1, −0.4) that is √(1 + 4) away.
    longer: Math.sqrt(5) - 1,
    angle_deg: 90,
    tolerance: 1e-9,
    source: 'plane trigonometry, worked by hand',
  },
];

test.each(ROWS)('$what turns the arm by $angle_deg°', ({ arm, rod, longer, ...row }) => {
  // A longer rod pushes the arm behind the axis outboard, so that a left wheel’s front goes inboard: to the right.
  const angle = degrees(valueOf(angleForRod(plane(arm, rod), rod + longer)));
  expect(Math.abs(angle + row.angle_deg)).toBeLessThanOrEqual(row.tolerance);
});
