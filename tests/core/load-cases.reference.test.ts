import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { contactCentre } from '#core/corner.ts';
import { actionOf } from '#core/load-cases.ts';
import { steered } from '#core/steering.ts';
import { NOTHING, vector } from '#core/vector.ts';
import { hingedCarrier } from '../references/mujoco.ts';
import { anyLoadFor, anyRotation } from './corner-arbitraries.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectClose } from './near.ts';

describe('the moment about the example corner’s axis', () => {
  const source = 'MuJoCo 3.3.8, mj_applyFT on a hinge through the same two points';
  const rows = [
    {
      load: 'a brake force and a part of the wheel load at the ground',
      action: { force: vector(-3000, 0, 900), point: contactCentre(EXAMPLE), couple: NOTHING },
      expected: 169.3631066,
    },
    {
      load: '3000 N by a brake on the carrier',
      action: actionOf(EXAMPLE, { kind: 'brake-on-carrier', force: 3000 }),
      expected: 173.2614902,
    },
    {
      load: '3000 N by an inboard brake',
      action: actionOf(EXAMPLE, { kind: 'shaft', force: -3000 }),
      expected: 273.9697313,
    },
    {
      load: '1000 N of drive through a shaft in line',
      action: actionOf(EXAMPLE, { kind: 'shaft', force: 1000 }),
      expected: -91.3232438,
    },
  ];

  test.each(rows)('of $load is $expected N·m', ({ action, expected }) => {
    // Half of the last printed digit.
    expect(Math.abs(momentOf(EXAMPLE, action) - expected), source).toBeLessThanOrEqual(5e-8);
  });
});

describe('the moment of any load, in any position', () => {
  test('is the generalised force that MuJoCo finds on a hinge', async () => {
    const { pivots } = EXAMPLE;
    const carrier = await hingedCarrier(pivots.lower, pivots.upper, {});
    fc.assert(
      fc.property(anyLoadFor(EXAMPLE), anyRotation, (load, angle) => {
        const corner = steered(EXAMPLE, angle);
        const action = actionOf(corner, load);
        carrier.turnTo(angle);
        const { force, point, couple } = action;
        expectClose(momentOf(corner, action), carrier.moment(force, point, couple), 1e-11);
      }),
    );
  });
});
