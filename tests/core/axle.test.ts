import { describe, expect, test } from 'vitest';
import { axleReaction, yawMoment, type Axle } from '#core/axle.ts';
import { faultsOf } from '#core/fault.ts';
import { handwheelTorque, rimForce } from '#core/handwheel.ts';
import type { LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { vector } from '#core/vector.ts';
import { EXAMPLE, valueOf } from './example-corner.ts';

const gear = { travelPerTurn: 0.048, rimRadius: 0.185, assist: 1 };
const axle: Axle = { left: EXAMPLE, right: mirroredCorner(EXAMPLE), gear };
const braking = (force: number): readonly LoadCase[] => [{ kind: 'brake-on-carrier', force }];

describe('brake forces on an axle', () => {
  test('that are equal leave the rack unloaded, though both wheels pull', () => {
    const reaction = valueOf(axleReaction(axle, { left: braking(2500), right: braking(2500) }));
    expect(reaction.left.moment).toBeGreaterThan(100);
    expect(reaction.right.moment).toBeCloseTo(-reaction.left.moment, 9);
    expect(reaction.rackForce).toBeCloseTo(0, 9);
    expect(reaction.handwheelTorque).toBeCloseTo(0, 9);
    expect(reaction.rimForce).toBeCloseTo(0, 9);
  });

  test('that are unequal leave the difference to the driver', () => {
    const split = valueOf(axleReaction(axle, { left: braking(2500), right: braking(400) }));
    const alone = valueOf(axleReaction(axle, { left: braking(2100), right: [] }));
    expect(split.rackForce).toBeCloseTo(alone.rackForce, 9);
    expect(split.rackForce).not.toBeCloseTo(0, 0);
    expect(split.handwheelTorque).toBe(handwheelTorque(split.rackForce, gear));
    expect(split.rimForce).toBe(rimForce(split.handwheelTorque, gear));
  });

  test('that are larger on the left turn the car to the left', () => {
    expect(yawMoment({ left: 3000, right: 1000 }, 1.5)).toBe(1500);
    expect(yawMoment({ left: 1000, right: 3000 }, 1.5)).toBe(-1500);
    expect(yawMoment({ left: 2000, right: 2000 }, 1.5)).toBe(0);
  });
});

describe('lateral forces on an axle', () => {
  test('to the same side do not cancel: they add on the rack', () => {
    const load: LoadCase = { kind: 'lateral', force: 2000, pneumaticTrail: 0.02 };
    const both = valueOf(axleReaction(axle, { left: [load], right: [load] }));
    const one = valueOf(axleReaction(axle, { left: [load], right: [] }));
    expect(both.rackForce).toBeCloseTo(2 * one.rackForce, 9);
  });
});

describe('an axle that cannot be', () => {
  test('has a tie rod through the axis: a fault with the side', () => {
    const { axis } = axle.right;
    const right = { ...axle.right, tieRod: { outer: axis.point, inner: vector(0, -0.3, 0.2) } };
    const faults = faultsOf(axleReaction({ ...axle, right }, { left: [], right: [] }));
    expect(faults.map(({ path }) => path)).toEqual(['right']);
    const left = { ...EXAMPLE, tieRod: { outer: EXAMPLE.axis.point, inner: vector(0, 0.3, 0.2) } };
    const ofLeft = faultsOf(axleReaction({ ...axle, left }, { left: [], right: [] }));
    expect(ofLeft.map(({ path }) => path)).toEqual(['left']);
  });

  test('lacks a tie rod: a mistake in the program', () => {
    const left = { ...EXAMPLE, tieRod: undefined };
    expect(() => axleReaction({ ...axle, left }, { left: [], right: [] })).toThrow(RangeError);
  });
});
