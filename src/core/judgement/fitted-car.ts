import type { Corner, Pivots, TieRod } from '../corner.ts';
import type { RatedHub } from '../document/set-up-hub.ts';
import type { Fixing } from '../fastening/fixing.ts';
import type { Tyre } from '../tyre/tyre.ts';
import type { Vector } from '../vector.ts';
import type { BenchCarDocument } from './bench-document.ts';
import type { InputId } from './inputs.ts';

/** What of a car on the bench is taken as it is, in SI; the rest are inputs with a ±. */
export interface FittedCar {
  readonly axisFrom: BenchCarDocument['axisFrom'];
  readonly driven: boolean;
  /** Whether left and right differ as the car stands: otherwise no model asks what they differ by. */
  readonly apart: boolean;
  readonly tyre: Tyre;
  /** The tie rod’s outer end from the lower pivot, its x left to an input, and its inner end from the outer one. */
  readonly rod: { readonly outer: Vector; readonly inner: Vector };
  /** Rows and duty; rating and load-line offset are left to inputs. */
  readonly hub: RatedHub;
  /** Wheel load that the duty belongs to, in newtons. */
  readonly dutyLoad: number;
  readonly fixing?: Fixing | undefined;
}

/** What is done at one wheel, in metres and radians; what is undefined stays as it is. */
export interface WheelChange {
  readonly spacer: number;
  /** Of another wheel: its own, not a difference. */
  readonly inset?: number | undefined;
  readonly rimWidth?: number | undefined;
  readonly wheelThickness?: number | undefined;
  readonly tyre?: Tyre | undefined;
  readonly camberAtUpperPivot: number;
  readonly camberAtCarrier: number;
}

export const AS_IT_STANDS: WheelChange = { spacer: 0, camberAtUpperPivot: 0, camberAtCarrier: 0 };

/** Values of the inputs in SI, by name. */
export type Values = (id: InputId) => number;

/** A front corner on the bench, which always has its pivots and its tie rod. */
export type BenchCorner = Corner & { readonly pivots: Pivots; readonly tieRod: TieRod };
