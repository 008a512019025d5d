import { describe, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { rodForce, rodLever } from '#core/tie-rod.ts';
import { slidTieRod } from '#core/rack-travel.ts';
import { steered } from '#core/steering.ts';
import { hingedCarrier } from '../references/mujoco.ts';
import { EXAMPLE, valueOf } from './example-corner.ts';
import { expectClose } from './near.ts';

describe('the lever of the example’s tie rod', () => {
  test('is how a rope of MuJoCo shortens with the angle, in every position of the rack', async () => {
    const { pivots, tieRod, axis } = EXAMPLE;
    if (!tieRod) throw new Error('the example has a tie rod');
    for (const angle of [-30, -12, 0, 7, 25].map(radians)) {
      const outer = steered(EXAMPLE, angle).tieRod?.outer ?? tieRod.outer;
      const { rod } = valueOf(slidTieRod(tieRod, outer));
      const carrier = await hingedCarrier(pivots.lower, pivots.upper, {
        outer: { at: tieRod.outer, rope: rod.inner },
      });
      carrier.turnTo(angle);
      // A rope in tension pulls the carrier so that it gets shorter: the moment of 1 N is −dℓ/dθ.
      const lever = -carrier.ropeLever('outer');
      expectClose(rodLever(axis, rod), lever, 1e-12);
      expectClose(valueOf(rodForce(axis, rod, 170)), -170 / lever, 1e-12);
    }
  });
});
