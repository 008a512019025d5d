import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { changed, changeFaults, NO_CHANGE, wheelShift } from '#core/change.ts';
import { measure } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { distance } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectNear } from './near.ts';

const before = measure(EXAMPLE);

describe('a camber change of −1.5°', () => {
  const camberAtUpperPivot = radians(-1.5);
  const atTop = changed(EXAMPLE, { ...NO_CHANGE, camberAtUpperPivot });
  const atCarrier = changed(EXAMPLE, { ...NO_CHANGE, camberAtCarrier: camberAtUpperPivot });

  test('leans the wheel alike, wherever it is made', () => {
    expect(degrees(measure(atTop).camber)).toBeCloseTo(-1.5, 9);
    expect(degrees(measure(atCarrier).camber)).toBeCloseTo(-1.5, 9);
    expectNear(atTop.wheelCentre, atCarrier.wheelCentre);
  });

  test('at the upper pivot adds 1.5° of inclination and keeps the included angle', () => {
    const { inclination, includedAngle, caster } = measure(atTop);
    expect(degrees(inclination - before.inclination)).toBeCloseTo(1.5, 9);
    expect(includedAngle).toBeCloseTo(before.includedAngle, 12);
    // In side view the axis has got a little shorter, no more.
    expect(Math.abs(caster - before.caster)).toBeLessThan(radians(0.02));
  });

  test('at the carrier leaves the axis and takes from the included angle', () => {
    expect(atCarrier.axis).toEqual(EXAMPLE.axis);
    expect(atCarrier.pivots).toEqual(EXAMPLE.pivots);
    const { includedAngle } = measure(atCarrier);
    expect(degrees(includedAngle - before.includedAngle)).toBeCloseTo(-1.5, 9);
  });

  test('takes the tie rod’s outer end along and leaves the inner end', () => {
    for (const corner of [atTop, atCarrier]) {
      expect(corner.tieRod?.inner).toBe(EXAMPLE.tieRod?.inner);
      expect(corner.tieRod?.outer).not.toEqual(EXAMPLE.tieRod?.outer);
    }
  });

  test('keeps the pivots on the axis and at their distance', () => {
    const { lower, upper } = atTop.pivots ?? EXAMPLE.pivots;
    expect(lower).toBe(EXAMPLE.pivots.lower);
    expect(distance(lower, upper)).toBeCloseTo(
      distance(EXAMPLE.pivots.lower, EXAMPLE.pivots.upper),
      14,
    );
    expectNear(atTop.axis.point, lower);
  });

  test('leans the top inboard on the right side too', () => {
    const right = changed(mirroredCorner(EXAMPLE), { ...NO_CHANGE, camberAtUpperPivot });
    expect(degrees(measure(right).camber)).toBeCloseTo(-1.5, 9);
  });
});

describe('a wheel set outward', () => {
  test('by a spacer or by less inset is the same', () => {
    const spaced = changed(EXAMPLE, { ...NO_CHANGE, spacer: 0.02 });
    const otherWheel = changed(EXAMPLE, { ...NO_CHANGE, inset: -0.02 });
    expect(spaced).toEqual(otherWheel);
    expect(wheelShift({ spacer: 0.02, inset: -0.01 })).toBeCloseTo(0.03, 15);
  });

  test('follows the spin axis as it leans after the camber change', () => {
    const change = { ...NO_CHANGE, spacer: 0.03, camberAtCarrier: radians(3) };
    const cambered = changed(EXAMPLE, { ...change, spacer: 0 });
    const { wheelCentre, spin } = changed(EXAMPLE, change);
    expect(wheelCentre.z).toBeCloseTo(cambered.wheelCentre.z + 0.03 * spin.z, 15);
    expect(wheelCentre.z).toBeLessThan(cambered.wheelCentre.z);
  });
});

describe('a larger tyre', () => {
  test('takes scrub radius away and leaves the spindle offset', () => {
    const after = measure(changed(EXAMPLE, { ...NO_CHANGE, loadedRadius: 0.02 }));
    expect(before.scrubRadius - after.scrubRadius).toBeCloseTo(
      0.02 * Math.tan(before.inclination),
      12,
    );
    expect(after.spindleOffset).toBeCloseTo(before.spindleOffset, 14);
  });
});

describe('a change that cannot be made', () => {
  const byAngles = { ...EXAMPLE, pivots: undefined };

  test('is a camber change of a corner without pivots', () => {
    const change = { ...NO_CHANGE, camberAtUpperPivot: 0.01, camberAtCarrier: 0.02 };
    expect(changeFaults(byAngles, change).map(({ path }) => path)).toEqual([
      'camberAtUpperPivot',
      'camberAtCarrier',
    ]);
    expect(() => changed(byAngles, change)).toThrow(RangeError);
  });

  test('is one that leaves no radius', () => {
    for (const loadedRadius of [-0.31, -0.4, NaN]) {
      const change = { ...NO_CHANGE, loadedRadius };
      expect(changeFaults(EXAMPLE, change).map(({ path }) => path)).toEqual(['loadedRadius']);
      expect(() => changed(EXAMPLE, change)).toThrow(RangeError);
    }
  });

  test('is neither a spacer nor a tyre on a corner without pivots', () => {
    const change = { ...NO_CHANGE, spacer: 0.02, loadedRadius: 0.01 };
    expect(changeFaults(byAngles, change)).toEqual([]);
    expect(changed(byAngles, change).axis).toBe(byAngles.axis);
  });
});
