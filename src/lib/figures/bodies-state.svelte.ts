import { valueText, type UnitSystem } from '#core/display.ts';
import { BODIES_CASE_IDS, BODIES_CASES, type BodiesCase } from '#scenes/bodies/cases.ts';
import { storedSI } from '#scenes/parameter-text.ts';
import type { Setting } from '#scenes/setting.ts';
import type { BodiesStart } from './look';

/** Wheel and carrier of one step: which case, how far apart, and how far down the force has been carried. */
export class BodiesState {
  which = $state<BodiesCase>('brake');
  /** From 0, together, to 1. */
  apart = $state(1);
  /** Whether this step is about carrying the force down. */
  readonly carries: boolean;
  readonly #radius_mm: () => number;
  #wanted = $state(0);
  /** Only a brake on the carrier hands over a couple that can be traded for a way down. */
  readonly canCarry = $derived(this.which === 'brake');
  /** In millimetres below the wheel centre. */
  readonly down = $derived.by(() =>
    this.canCarry ? Math.min(this.#wanted, this.#radius_mm()) : 0,
  );
  /** As a share of the way to the road. */
  readonly carried = $derived.by(() => (this.carries ? this.down / this.#radius_mm() : undefined));
  /** The scale of the way down: steps of about a millimetre that end at the road. */
  readonly scale = $derived.by(() => {
    const most = this.#radius_mm();
    return {
      name: 'Force carried down by',
      kind: 'length',
      least: 0,
      most,
      step: most / Math.round(most),
    } as const;
  });

  /** @param radius_mm the loaded radius: the whole way down */
  constructor(start: BodiesStart, radius_mm: () => number) {
    this.which = start.which;
    this.apart = start.as === 'together' ? 0 : 1;
    this.carries = start.as === 'carried';
    this.#radius_mm = radius_mm;
  }

  /** Goes down to a place, kept between the wheel centre and the road. */
  carry(down: number): void {
    this.#wanted = Math.min(this.#radius_mm(), Math.max(0, down));
  }

  /** Where the force is, in words. */
  downWords(units: UnitSystem): string {
    if (!this.canCarry) return 'no couple to trade: the force stays at the wheel centre';
    if (this.down === 0) return 'at the wheel centre';
    if (this.carried === 1) return 'at the road: the whole loaded radius';
    return `${valueText(storedSI('length', this.down), 'length', units)} below the wheel centre`;
  }
}

/** The loads of a case alone, with a force that is usual for it. */
export const loadsOf = (which: BodiesCase): Partial<Setting> => ({
  ...Object.fromEntries(BODIES_CASE_IDS.map((id) => [BODIES_CASES[id].load, 0])),
  [BODIES_CASES[which].load]: BODIES_CASES[which].usual,
});
