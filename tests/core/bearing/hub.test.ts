import { describe, expect, test } from 'vitest';
import { hubLoads, type Hub } from '#core/bearing/hub.ts';
import { rowOf } from './arbitraries.ts';

const row = rowOf('ball', 27e3, 35);
const hub: Hub = { loadLineOffset: 0, spread: 0.06, outboard: row, inboard: row };

describe('loads of a hub', () => {
  test('straight ahead with the load line in the middle the rows carry the same, and no thrust counts', () => {
    const { radial, thrust, equivalent } = hubLoads(hub, { vertical: 4000, inward: 0 }, 0.3);
    expect(radial).toEqual({ outboard: 2000, inboard: 2000 });
    expect(thrust.outboard).toBe(thrust.inboard);
    expect(equivalent).toEqual({ outboard: 2000, inboard: 2000 });
  });

  test('in a turn the outer wheel’s inboard row takes the radial load and its outboard row the thrust', () => {
    const { radial, thrust } = hubLoads(hub, { vertical: 5500, inward: 3000 }, 0.3);
    expect(Math.abs(radial.inboard)).toBeGreaterThan(Math.abs(radial.outboard));
    expect(thrust.outboard).toBeGreaterThan(thrust.inboard);
  });

  test('worked by hand: 4000 N down and 1000 N inward at 0.3 m over rows 60 mm apart', () => {
    // Radial 2000 ∓ 0.3·1000/0.06; induced F_r/(2·0.66); the outboard row takes S_inboard + 1000;
    // both rows are past or short of e = 0.95 by a wide margin.
    const { radial, thrust, equivalent } = hubLoads(hub, { vertical: 4000, inward: 1000 }, 0.3);
    expect(radial.outboard).toBeCloseTo(-3000, 9);
    expect(radial.inboard).toBeCloseTo(7000, 9);
    expect(thrust.inboard).toBeCloseTo(7000 / 1.32, 9);
    expect(thrust.outboard).toBeCloseTo(7000 / 1.32 + 1000, 9);
    expect(equivalent.inboard).toBeCloseTo(7000, 9);
    expect(equivalent.outboard).toBeCloseTo(0.37 * 3000 + 0.66 * (7000 / 1.32 + 1000), 9);
  });
});
