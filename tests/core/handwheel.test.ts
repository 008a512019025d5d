import { describe, expect, test } from 'vitest';
import { handwheelTorque, rimForce } from '#core/handwheel.ts';

const gear = { travelPerTurn: 0.05, rimRadius: 0.185, assist: 1 };

describe('the way from the rack to the hands', () => {
  test('keeps the work of one turn', () => {
    const torque = handwheelTorque(1000, gear);
    expect(torque * 2 * Math.PI).toBeCloseTo(1000 * 0.05, 9);
  });

  test('is eased by the assistance', () => {
    const alone = handwheelTorque(1000, gear);
    expect(handwheelTorque(1000, { ...gear, assist: 4 })).toBeCloseTo(alone / 4, 12);
  });

  test('ends in a force at the rim, smaller on a larger wheel', () => {
    expect(rimForce(37, gear)).toBeCloseTo(200, 9);
    expect(rimForce(37, { rimRadius: 0.37 })).toBeCloseTo(100, 9);
  });

  test('keeps the sign of the rack force', () => {
    expect(rimForce(handwheelTorque(-10, gear), gear)).toBeLessThan(0);
  });
});
