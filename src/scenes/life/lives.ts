import type { HubRating } from '#core/bearing/hub-rating.ts';
import type { Rows } from '#core/bearing/rows.ts';
import type { CornerModel } from '#core/car/car.ts';
import { loadLineOffset, ratingOf, rolling } from '../corner/rolling.ts';
import { PARAMETERS } from '../parameters.ts';
import { unchanged, type Setting } from '../setting.ts';
import { LIFE_OVER, type LifeOver } from './life-over.ts';

/** Rating lives at one place of the chart, as shares of what both rows together have without the change. */
export interface Lives extends Rows<number> {
  /** Spacer or load-line offset, in metres. */
  readonly at: number;
  readonly both: number;
  /** Whether the life equation holds there, for both rows. */
  readonly withinScope: boolean;
}

/** Few enough for a phone, and one on every millimetre of the longer range. */
const SAMPLES = 100;

/** The lives along the whole range of the chart, everything else as it is set. */
export function livesOver(model: CornerModel, setting: Setting, over: LifeOver): readonly Lives[] {
  const id = LIFE_OVER[over];
  const { least, most } = PARAMETERS[id];
  return Array.from({ length: SAMPLES + 1 }, (_, i) =>
    livesAt(model, { ...setting, [id]: least + ((most - least) * i) / SAMPLES }, over),
  ).sort((a, b) => a.at - b.at);
}

/** The lives where the corner stands. */
export function livesAt(model: CornerModel, setting: Setting, over: LifeOver): Lives {
  const whole = ratingOf(rolling(model, unchanged(setting))).life;
  const { outboard, inboard, life, withinScope }: HubRating = ratingOf(rolling(model, setting));
  return {
    at: over === 'spacer' ? setting.spacer / 1000 : loadLineOffset(model, setting),
    outboard: outboard.life / whole,
    inboard: inboard.life / whole,
    both: life / whole,
    withinScope,
  };
}
