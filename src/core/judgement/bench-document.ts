import type { CornerDocument } from '../document/corner-document.ts';
import type { InputId } from './inputs.ts';
import type { Source } from './known-value.ts';

export const BENCH_FORMAT = 'knucklebook bench';
export const BENCH_VERSION = 2;

/** Up to so many changes side by side. */
export const MOST_VARIANTS = 4;

export const SUSPENSIONS = ['strut', 'double-arm'] as const;
export const DRIVES = ['front', 'rear', 'four'] as const;
/** Where the axis comes from: both pivots by straightedge and plumb line, or the lower pivot and a sheet’s angles. */
export const AXIS_WAYS = ['pivots', 'sheet'] as const;
/** What a car on the bench began as. */
export const ORIGINS = ['training-car', 'file', 'garage'] as const;

/** One’s own car and what is to be changed on it, as it is kept, sent and read: millimetres, degrees, newtons. */
export interface BenchDocument {
  readonly format: typeof BENCH_FORMAT;
  readonly version: typeof BENCH_VERSION;
  readonly car: BenchCarDocument;
  /** None to four. */
  readonly variants: readonly VariantDocument[];
}

export interface BenchCarDocument {
  readonly name: string;
  readonly origin: (typeof ORIGINS)[number];
  readonly suspension: (typeof SUSPENSIONS)[number];
  readonly drive: (typeof DRIVES)[number];
  /** As marked on the sidewall; with its load index where it is known. */
  readonly tyre: string;
  /** The left front corner that every input falls back on, standing straight ahead, without a change. */
  readonly corner: CornerDocument;
  readonly axisFrom: (typeof AXIS_WAYS)[number];
  /** What is known of this car; what is left out is the corner’s, with the ± that belongs to the car’s origin. */
  readonly values: Readonly<Partial<Record<InputId, ValueDocument>>>;
  /** What holds the wheel; without it nothing is said about threads. */
  readonly fixing?: FixingDocument;
}

/** A number in the unit of its key, with its ± in the same unit. */
export interface ValueDocument {
  readonly value: number;
  readonly plusMinus: number;
  readonly source: Source;
}

export interface FixingDocument {
  readonly fastener: 'bolt' | 'stud';
  readonly thread_mm: number;
  readonly pitch_mm: number;
  readonly count: number;
  readonly circle_mm: number;
  readonly reach_mm: number;
  readonly depth_mm: number;
  readonly wheelThickness_mm: number;
  readonly seat: 'cone' | 'ball' | 'flat';
  readonly torque_Nm: number;
}

/** A change to be judged: the same on both front wheels, or one for each. */
export type VariantDocument = { readonly name: string } & (
  | { readonly both: WheelChangeDocument }
  | { readonly left: WheelChangeDocument; readonly right: WheelChangeDocument }
);

/** What is done at one wheel; what is left out stays as it is. */
export interface WheelChangeDocument {
  readonly spacer_mm?: number;
  /** Another wheel: its own inset and rim width, and how thick it is between seat and hub face. */
  readonly inset_mm?: number;
  readonly rimWidth_in?: number;
  readonly wheelThickness_mm?: number;
  /** Another tyre, as marked. */
  readonly tyre?: string;
  /** Camber gained at the top plate or an upper arm; at the knuckle or a slotted strut bolt. */
  readonly camberAtUpperPivot_deg?: number;
  readonly camberAtCarrier_deg?: number;
}
