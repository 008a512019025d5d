import { expect, test } from 'vitest';
import { rateHub } from '#core/bearing/hub-rating.ts';
import { cornerModels } from '#core/judgement/corner-model.ts';
import { GARAGE_FILES, garageBench, garageSetup } from '../../garage-benches.ts';
import { expectClose } from '../near.ts';
import { planeResults } from './plane-bench.ts';
import { bestOf } from './plane-car.ts';

/** Tolerance: both reckon with all digits; the plane leaves what camber does to lengths to its cosine. */
const NEAR = 1e-6;

test.each([...GARAGE_FILES.keys()])(
  'on %s the figures’ bearing has the rating, angle and loads that are entered: its life is that of plane trigonometry',
  (id) => {
    const bench = garageBench(id);
    const { left } = cornerModels(garageSetup(id), bench.car);
    const { life } = rateHub(left.bearing.hub, left.bearing.duty, {
      loadedRadius: left.corner.loadedRadius,
      rollingRadius: left.rollingRadius,
    });
    const plane = planeResults(bench, bestOf(bench));
    expect(plane['hubLife']).toBeGreaterThan(0);
    expectClose(life, plane['hubLife'] ?? NaN, NEAR);
  },
);
