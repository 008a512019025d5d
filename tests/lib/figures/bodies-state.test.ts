import { describe, expect, test } from 'vitest';
import { BodiesState, loadsOf } from '../../../src/lib/figures/bodies-state.svelte.ts';
import type { BodiesStart } from '../../../src/lib/figures/look.ts';

const begun = (start: BodiesStart) => new BodiesState(start, () => 292);

describe('wheel and carrier of a step', () => {
  test.each([
    ['together', 0, undefined],
    ['apart', 1, undefined],
    ['carried', 1, 0],
  ] as const)('begin %s', (as, apart, carried) => {
    const bodies = begun({ which: 'brake', as });
    expect([bodies.apart, bodies.carried]).toEqual([apart, carried]);
  });
});

describe('the force', () => {
  test('is carried between the wheel centre and the road, and says where it is', () => {
    const bodies = begun({ which: 'brake', as: 'carried' });
    expect(bodies.downWords('metric')).toBe('at the wheel centre');
    bodies.carry(146);
    expect(bodies.carried).toBe(0.5);
    expect(bodies.downWords('metric')).toBe('146.0\u202fmm below the wheel centre');
    bodies.carry(500);
    expect(bodies.carried).toBe(1);
    expect(bodies.downWords('metric')).toContain('at the road');
    bodies.carry(-3);
    expect(bodies.down).toBe(0);
  });

  test('ends at the road in whole steps, whatever the radius', () => {
    const { most, step } = begun({ which: 'brake', as: 'carried' }).scale;
    expect(most / step).toBeCloseTo(Math.round(most / step), 9);
  });

  test('stays at the wheel centre where no couple reaches the carrier', () => {
    const bodies = begun({ which: 'brake', as: 'carried' });
    bodies.carry(100);
    bodies.which = 'shaft';
    expect([bodies.canCarry, bodies.down, bodies.carried]).toEqual([false, 0, 0]);
    expect(bodies.downWords('metric')).toContain('no couple');
  });
});

test('a case brings its own load and takes the others away', () => {
  expect(loadsOf('edge')).toEqual({ brake: 0, drive: 0, blow: 4000, drag: 0 });
});
