import type { Sides } from '#core/axle.ts';
import type { CornerModel } from '#core/car/car.ts';
import type { Values } from '#core/judgement/fitted-car.ts';
import { madeChange } from '#core/judgement/made-change.ts';
import { settingOfChange } from '#scenes/bench/setting-of-change.ts';
import { AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import type { Bench } from './bench.svelte';

/** The change that is looked at as the setting of a figure of one wheel; the car as it stands where there is none. */
export function settingOf(
  { setup, chosen }: Bench,
  models: Sides<CornerModel>,
  side: keyof Sides<unknown>,
): Setting {
  const change = setup?.variants[chosen]?.[side];
  if (setup === undefined || change === undefined) return AS_IT_STANDS;
  const value: Values = (id) => setup.known[id].value;
  const made = madeChange(setup.car, value, change, models[side].corner.loadedRadius);
  const rimGain = change.rimWidth === undefined ? 0 : change.rimWidth - value('rimWidth_in');
  return settingOfChange(made, rimGain);
}
