import type { Sides } from '#core/axle.ts';
import type { CornerModel } from '#core/car/car.ts';
import { cornerModels } from '#core/judgement/corner-model.ts';
import type { Bench } from './bench.svelte';

/** Both front corners of the car on the bench as figures draw them; none where its numbers make no car. */
export const modelsOf = ({ setup, document }: Bench): Sides<CornerModel> | undefined =>
  setup && cornerModels(setup, document.car);
