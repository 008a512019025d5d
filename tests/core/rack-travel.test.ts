import { describe, expect, test } from 'vitest';
import { faultsOf } from '#core/fault.ts';
import { slidTieRod, steeredOnRack } from '#core/rack-travel.ts';
import { radians } from '#core/angle.ts';
import { vector } from '#core/vector.ts';
import { EXAMPLE, valueOf } from './example-corner.ts';

const rod = { outer: vector(0, 0.6, 0), inner: vector(0, 0.3, 0) };

describe('the inner end of a tie rod', () => {
  test('goes across with the outer end', () => {
    const { rod: moved, travel } = valueOf(slidTieRod(rod, vector(0, 0.65, 0)));
    expect(travel).toBeCloseTo(0.05, 15);
    expect(moved.inner.y).toBeCloseTo(0.35, 15);
  });

  test('follows on to the side when the outer end leaves the line', () => {
    // The rod of 0.3 m reaches 0.24 m across when its outer end is 0.18 m ahead.
    const { travel } = valueOf(slidTieRod(rod, vector(0.18, 0.6, 0)));
    expect(travel).toBeCloseTo(0.06, 15);
  });

  test('stays on its side where both solutions are equally near', () => {
    const { travel } = valueOf(slidTieRod(rod, vector(0, 0.3, 0)));
    expect(travel).toBeCloseTo(-0.3, 15);
  });

  test('cannot follow farther than the rod is long', () => {
    expect(slidTieRod(rod, vector(0.3, 0.6, 0)).ok).toBe(true);
    expect(faultsOf(slidTieRod(rod, vector(0.3001, 0.6, 0)))).toHaveLength(1);
    expect(faultsOf(slidTieRod(rod, vector(0, 0.6, NaN)))).toHaveLength(1);
  });
});

describe('a steered corner on its rack', () => {
  test('with the rod behind the axis sends the rack to the right for a turn to the left', () => {
    const { rackTravel } = valueOf(steeredOnRack(EXAMPLE, radians(10)));
    expect(rackTravel).toBeLessThan(-0.015);
    expect(rackTravel).toBeGreaterThan(-0.03);
  });

  test('straight ahead has not moved its rack', () => {
    expect(valueOf(steeredOnRack(EXAMPLE, 0)).rackTravel).toBeCloseTo(0, 15);
  });

  test('without a tie rod has no rack travel', () => {
    const bare = { ...EXAMPLE, tieRod: undefined };
    expect(valueOf(steeredOnRack(bare, 0.2))).not.toHaveProperty('rackTravel');
  });
});
