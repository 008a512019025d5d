import { bearingLoads, byBearing, wheelLoad } from '../corner/bearing-values.ts';
import type { Standing } from '../corner/standing.ts';
import { provideFamily } from './families.ts';

provideFamily('bearing', {
  value: byBearing,
  ratios: {
    /** How many wheel loads the inboard row carries, whichever way. */
    inboardOverLoad: (now) => overLoad(bearingLoads(now).radial.inboard, now),
    outboardOverLoad: (now) => overLoad(bearingLoads(now).radial.outboard, now),
    /** The factor Y of the rows: thrust is weighed with it, and a row's radial load over it twice is its induced thrust. */
    thrustFactor: ({ hub }) => hub.outboard.factors.Y,
  },
});

/** Of a wheel without load nothing is a multiple. */
function overLoad(radial: number, now: Standing): number {
  const { vertical } = wheelLoad(now);
  return vertical > 0 ? Math.abs(radial) / vertical : 0;
}
