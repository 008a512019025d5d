import type { UnitSystem } from '#core/display.ts';
import type { BodiesCase } from './cases.ts';

/** How wheel and carrier are drawn. */
export interface BodiesLook {
  readonly which: BodiesCase;
  /** From 0, together, to 1, wholly apart. */
  readonly apart: number;
  /**
   * How far down the carrier's force is counted: from 0, at the wheel centre, to 1, at the road. Left out, force
   * and torque stand where they enter.
   */
  readonly carried?: number | undefined;
  readonly units: UnitSystem;
}
