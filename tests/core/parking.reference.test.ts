import { describe, expect, test } from 'vitest';
import {
  parkingMomentByGyration,
  parkingMomentByPressure,
  parkingMomentByThirds,
} from '#core/parking.ts';

const print = { width: 0.25, scrubRadius: 0.025 };

describe('parking moment of a wheel', () => {
  test('of a van with 1200 kg on it, by thirds of the print, is the printed 594 N·m', () => {
    const source =
      'Barton and Fieldhouse, Automotive Chassis Engineering (2018), example E2.1, p. 82';
    const moment = parkingMomentByThirds(1200 * 9.81, 0.58, print);
    // Printed in whole newton metres, from a lever printed as 87 mm.
    expect(Math.abs(moment - 594), source).toBeLessThanOrEqual(0.5);
    expect(Math.abs(moment / (0.58 * 1200 * 9.81) - 0.087), source).toBeLessThanOrEqual(5e-4);
  });

  test('of a round print has the disc’s radius of gyration in it', () => {
    // Worked by hand: the mean square radius of a disc of diameter B is B²/8.
    const atPivot = parkingMomentByGyration(1, 1, { width: 0.25, scrubRadius: 0 });
    expect(atPivot).toBeCloseTo(0.25 / Math.sqrt(8), 15);
    expect(parkingMomentByGyration(1, 1, { width: 0, scrubRadius: -0.04 })).toBeCloseTo(0.04, 15);
  });

  test('by pressure alone is an eighth below that of a round print under that pressure', () => {
    // Worked by hand: sliding friction on a disc of area W/p has the moment (2/3) μ W √(W/(π p)), which is
    // 0.3761 μ √(W³/p), where Gough’s fit to tests has a third: √π/2 of it.
    const [load, friction, pressure] = [4000, 0.7, 220e3];
    const radius = Math.sqrt(load / (Math.PI * pressure));
    const disc = (2 / 3) * friction * load * radius;
    const fit = parkingMomentByPressure(load, friction, pressure);
    expect(fit / disc).toBeCloseTo(Math.sqrt(Math.PI) / 2, 12);
  });
});

describe('the ways to estimate it', () => {
  test('differ by a twentieth for one and the same tyre', () => {
    const ratio = parkingMomentByGyration(1, 1, print) / parkingMomentByThirds(1, 1, print);
    // Worked by hand: √(25²/8·10² + 25²)/√((250/3)² + 25²) = 91.86/87.00.
    expect(ratio).toBeCloseTo(91.86 / 87.0, 3);
  });
});
