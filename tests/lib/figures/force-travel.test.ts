import { describe, expect, test } from 'vitest';
import { WAY_END } from '#scenes/bearing/force-way.ts';
import { ForceTravel } from '../../../src/lib/figures/force-travel.svelte.ts';

describe('a force that a reader moves', () => {
  test('goes from station to station, and from the last one back to the road', () => {
    const force = new ForceTravel();
    force.go(1.5);
    force.next();
    expect(force.way).toBe(2);
    expect(force.station.name).toBe('hub on inner rings');
    force.go(99);
    expect(force.way).toBe(WAY_END);
    expect(force.arrived).toBe(true);
    force.next();
    expect(force.way).toBe(0);
  });

  test('stands still until it is sent', () => {
    const force = new ForceTravel();
    expect(force.travels).toBe(false);
    force.stop();
    expect([force.way, force.travels]).toEqual([0, false]);
  });
});
