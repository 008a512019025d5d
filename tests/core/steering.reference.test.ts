import { describe, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { steered } from '#core/steering.ts';
import { hingedCarrier } from '../references/mujoco.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectNear } from './near.ts';

describe('a steered carrier', () => {
  test('is where MuJoCo turns a body on a hinge', async () => {
    const { pivots, wheelCentre, tieRod, spin } = EXAMPLE;
    if (!tieRod) throw new Error('the example has a tie rod');
    const carrier = await hingedCarrier(pivots.lower, pivots.upper, {
      centre: { at: wheelCentre },
      outer: { at: tieRod.outer },
    });
    for (const angle of [-45, -20, -3, 0, 10, 20, 40].map(radians)) {
      carrier.turnTo(angle);
      const now = steered(EXAMPLE, angle);
      expectNear(now.wheelCentre, carrier.place('centre'), 1e-14);
      expectNear(now.tieRod?.outer ?? wheelCentre, carrier.place('outer'), 1e-14);
      expectNear(now.spin, carrier.arrow(spin), 1e-14);
    }
  });
});
