import { describe, expect, test } from 'vitest';
import { clampLoad, clampRange, torqueForClamp } from '#core/fastening/clamp-load.ts';
import { engagement, turnsIn, usualEngagement } from '#core/fastening/engagement.ts';
import { clampToGrip, gripAtWorst } from '#core/fastening/friction-grip.ts';
import { nutFactor, torqueShares } from '#core/fastening/nut-factor.ts';

const M14 = { diameter: 0.014, pitch: 0.0015 };

describe('thread engagement', () => {
  test('shrinks by the whole thickness of a spacer under the same bolts', () => {
    const bolt = { reach: 0.015, depth: 0.016 };
    expect(engagement(bolt, 0)).toBeCloseTo(0.015, 12);
    expect(engagement(bolt, 0.005)).toBeCloseTo(0.01, 12);
  });

  test('stays whole while a stud still stands out of its nut, and shrinks from there on', () => {
    const stud = { reach: 0.022, depth: 0.016 };
    expect(engagement(stud, 0.005)).toBe(0.016);
    expect(engagement(stud, 0.01)).toBeCloseTo(0.012, 12);
  });

  test('is nought, and not less, where the thread no longer reaches', () => {
    expect(engagement({ reach: 0.015, depth: 0.016 }, 0.02)).toBe(0);
  });

  test('is counted in turns of one pitch', () => {
    expect(turnsIn(0.012, M14)).toBeCloseTo(8, 12);
    expect(usualEngagement(M14)).toBe(0.014);
  });

  test('has no spacer of less than nothing', () => {
    expect(() => engagement({ reach: 0.015, depth: 0.016 }, -0.001)).toThrow(RangeError);
    expect(() => engagement({ reach: 0.015, depth: 0.016 }, NaN)).toThrow(RangeError);
  });
});

describe('clamp load', () => {
  test('goes back to the torque that it came from', () => {
    expect(torqueForClamp(clampLoad(120, 0.2, M14), 0.2, M14)).toBeCloseTo(120, 10);
  });

  test('with oil on the thread is higher at the same torque', () => {
    expect(clampLoad(120, 0.14, M14)).toBeGreaterThan(clampLoad(120, 0.2, M14));
  });

  test('scatters about its middle by the tightening factor', () => {
    const { least, most } = clampRange(40_000, 1.6);
    expect((least + most) / 2).toBeCloseTo(40_000, 8);
    expect(most / least).toBeCloseTo(1.6, 12);
    expect(clampRange(40_000, 1)).toEqual({ least: 40_000, most: 40_000 });
  });

  test('needs some friction, and a factor of 1 or more', () => {
    expect(() => clampLoad(120, 0, M14)).toThrow(RangeError);
    expect(() => clampRange(1, 0.9)).toThrow(RangeError);
  });
});

describe('where the torque goes', () => {
  const rubbing = { inThread: 0.12, underHead: 0.12, headRadius: 0.0095 };

  test('is friction for the most part: little is left to stretch the bolt', () => {
    const { stretch, thread, head } = torqueShares(M14, rubbing);
    const share = stretch / (stretch + thread + head);
    // Common practice, no source: about a tenth stretches, half rubs under the head, the rest in the thread.
    expect(share).toBeGreaterThan(0.08);
    expect(share).toBeLessThan(0.15);
    expect(head).toBeGreaterThan(thread);
  });

  test('on a cone, which wedges, rubs more than on a flat face', () => {
    const cone = { ...rubbing, seatHalfAngle: Math.PI / 6 };
    expect(torqueShares(M14, cone).head).toBeCloseTo(2 * torqueShares(M14, rubbing).head, 12);
    expect(nutFactor(M14, cone)).toBeGreaterThan(nutFactor(M14, rubbing));
  });

  test('without any friction only climbs the thread', () => {
    const none = { inThread: 0, underHead: 0, headRadius: 0.01 };
    expect(nutFactor(M14, none)).toBeCloseTo(1.5 / (2 * Math.PI * 14), 12);
    expect(() => nutFactor(M14, { ...none, inThread: -0.1 })).toThrow(RangeError);
  });
});

describe('the grip of the faces', () => {
  const grip = { torque: 1200, force: 6000, circleRadius: 0.06, count: 5, friction: 0.2 };

  test('is shared by the fasteners, with torque and force adding up at the worst one', () => {
    expect(gripAtWorst(grip)).toBeCloseTo((1200 / 0.06 + 6000) / 5, 9);
    expect(clampToGrip(grip)).toBeCloseTo(26_000, 9);
  });

  test('asks for twice the clamp load where the friction is half', () => {
    expect(clampToGrip({ ...grip, friction: 0.1 })).toBeCloseTo(2 * clampToGrip(grip), 9);
  });

  test('does not care which way the torque goes', () => {
    expect(clampToGrip({ ...grip, torque: -1200 })).toBe(clampToGrip(grip));
  });

  test('cannot come from faces without friction', () => {
    expect(() => clampToGrip({ ...grip, friction: 0 })).toThrow(RangeError);
  });
});
