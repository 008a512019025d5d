import { describe, expect, test } from 'vitest';
import { inducedThrust, rowThrusts } from '#core/bearing/thrust.ts';

describe('induced thrust', () => {
  test('of a radial load does not ask which way the load is directed', () => {
    expect(inducedThrust(-3000, { Y: 0.66 })).toBe(inducedThrust(3000, { Y: 0.66 }));
  });

  test('is half the radial load where Y is 1', () => {
    expect(inducedThrust(3000, { Y: 1 })).toBe(1500);
  });
});

describe('thrusts of two rows back to back', () => {
  test('without lateral force the greater induced thrust clamps both rows', () => {
    expect(rowThrusts({ outboard: 1500, inboard: 900 }, 0)).toEqual({
      outboard: 1500,
      inboard: 1500,
    });
    expect(rowThrusts({ outboard: 900, inboard: 1500 }, 0)).toEqual({
      outboard: 1500,
      inboard: 1500,
    });
  });

  test('a strong push toward the car goes to the outboard row, on top of the other row’s induced thrust', () => {
    expect(rowThrusts({ outboard: 900, inboard: 1500 }, 2000)).toEqual({
      outboard: 3500,
      inboard: 1500,
    });
  });

  test('a strong pull away from the car goes to the inboard row', () => {
    expect(rowThrusts({ outboard: 900, inboard: 1500 }, -2000)).toEqual({
      outboard: 900,
      inboard: 2900,
    });
  });

  test('a push weaker than the difference of the induced thrusts only relieves the other row', () => {
    expect(rowThrusts({ outboard: 1500, inboard: 900 }, 400)).toEqual({
      outboard: 1500,
      inboard: 1100,
    });
  });

  test('a push that just makes up the difference may be counted either way', () => {
    expect(rowThrusts({ outboard: 1500, inboard: 900 }, 600)).toEqual({
      outboard: 1500,
      inboard: 900,
    });
  });
});
