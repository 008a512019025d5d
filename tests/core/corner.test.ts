import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import {
  contactCentre,
  downInWheelPlane,
  heading,
  outboard,
  spinAxis,
  stanceOf,
} from '#core/corner.ts';
import { vector } from '#core/vector.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectNear } from './near.ts';

describe('the wheel', () => {
  test('heads forward on both sides while it has no toe', () => {
    for (const side of ['left', 'right'] as const) {
      const wheel = { side, spin: spinAxis(side, radians(3), 0) };
      expectNear(heading(wheel), vector(1, 0, 0));
    }
  });

  test('with toe-in heads toward the middle of the car', () => {
    const toe = radians(2);
    const left = heading({ side: 'left', spin: spinAxis('left', 0, toe) });
    const right = heading({ side: 'right', spin: spinAxis('right', 0, toe) });
    expectNear(left, vector(Math.cos(toe), -Math.sin(toe), 0));
    expectNear(right, vector(Math.cos(toe), Math.sin(toe), 0));
  });

  test('has its outboard direction level, away from the car', () => {
    const left = { side: 'left', spin: spinAxis('left', radians(5), 0) } as const;
    const right = { side: 'right', spin: spinAxis('right', radians(5), 0) } as const;
    expectNear(outboard(left), vector(0, 1, 0));
    expectNear(outboard(right), vector(0, -1, 0));
  });

  test('with positive camber stands on a point inboard of its centre', () => {
    const camber = radians(4);
    const spin = spinAxis('left', camber, 0);
    expectNear(downInWheelPlane(spin), vector(0, -Math.sin(camber), -Math.cos(camber)));
  });

  test('touches the ground one loaded radius below its centre while upright', () => {
    const spin = spinAxis('right', 0, 0);
    const wheelCentre = vector(1.2, -0.7, 0.3);
    const contact = contactCentre({ wheelCentre, spin, loadedRadius: 0.28 });
    expectNear(contact, vector(1.2, -0.7, 0.02));
  });

  test('stands as its heading, its outboard direction and its contact centre say, on both sides', () => {
    for (const side of ['left', 'right'] as const) {
      const corner = { ...EXAMPLE, side, spin: spinAxis(side, radians(-3), radians(20)) };
      expect(stanceOf(corner)).toEqual({
        ahead: heading(corner),
        out: outboard(corner),
        contact: contactCentre(corner),
      });
    }
  });

  test('that lies flat has no heading', () => {
    const flat = vector(0, 0, -1);
    expect(() => heading({ side: 'left', spin: flat })).toThrow(RangeError);
    expect(() => stanceOf({ ...EXAMPLE, spin: flat })).toThrow(RangeError);
  });
});
