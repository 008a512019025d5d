import { describe, expect, test } from 'vitest';
import { handwheelTorque } from '#core/handwheel.ts';

describe('torque at the steering wheel of a rack and pinion', () => {
  const source = 'Barton and Fieldhouse, Automotive Chassis Engineering (2018), p. 87';
  /** An old gear box took 50 N·m in 3.5 turns with an efficiency of 0.8; the rack travels 168.5 mm. */
  const work = 50 * 0.8 * 3.5 * 2 * Math.PI;
  const rackForce = work / 0.1685;
  const efficiency = 0.97;
  const rows = [
    // The book rounds the turns to 2.55 before it goes on: 0.2 %.
    { module: 3, expected: 56.6, relative: 0.002 },
    { module: 2.5, expected: 47.16, relative: 0.002 },
  ];

  test.each(rows)('with 7 teeth of module $module is $expected N·m', (row) => {
    const travelPerTurn = Math.PI * 7 * row.module * 1e-3;
    const torque = handwheelTorque(rackForce, { travelPerTurn, assist: efficiency });
    expect(Math.abs(torque / row.expected - 1), source).toBeLessThanOrEqual(row.relative);
  });
});
