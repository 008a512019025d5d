import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Guesses } from '../corner/measure-place.ts';
import type { ParameterId } from '../parameters.ts';

/** How much is shown: the bearing alone, or the whole wheel on the road. */
export const BEARING_VIEWS = {
  section: { name: 'Bearing' },
  wheel: { name: 'Whole wheel' },
} as const;

export type BearingView = keyof typeof BEARING_VIEWS;

export const BEARING_VIEW_IDS = Object.keys(BEARING_VIEWS) as readonly BearingView[];

/** Which loads the arrows have to have room for: straight ahead, or in a turn, where they are several times as long. */
export const BEARING_DUTIES = ['straight', 'turn'] as const;

export type BearingDuty = (typeof BEARING_DUTIES)[number];

/** How a wheel bearing is drawn. */
export interface BearingLook {
  readonly view: BearingView;
  readonly duty: BearingDuty;
  readonly measures: readonly QuantityId[];
  /** Whether the parts bear their names. */
  readonly named: boolean;
  readonly handles: readonly ParameterId[];
  /** How far the force has gone on its way from the road to the carrier, in stations; left out, no way is drawn. */
  readonly way?: number | undefined;
  readonly units: UnitSystem;
  readonly guesses: Guesses;
}
