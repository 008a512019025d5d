import type { RowKind } from '../bearing/factors.ts';
import type { Side } from '../corner.ts';

/** A point, or a vector, as [x, y, z] in vehicle axes. */
export type Triple = readonly [x: number, y: number, z: number];

/**
 * One front corner of a car as people write it down: millimetres, degrees and newtons, each named in its
 * key. Signs are those of ISO 8855; the ground is not given, it follows from the wheel.
 */
export interface CornerDocument {
  readonly side: Side;
  readonly axis: PivotsDocument | AnglesDocument;
  readonly wheel: WheelDocument;
  /** Rotation θ of the carrier about the steering axis, positive to the left; 0 where left out. */
  readonly rotation_deg?: number;
  readonly forces?: readonly ForceDocument[];
  readonly steering?: SteeringDocument;
  readonly hub?: HubDocument;
  readonly change?: ChangeDocument;
}

/** The steering axis by its pivots: ball-joint centres, or a strut's top-bearing centre above. */
export interface PivotsDocument {
  readonly lower_mm: Triple;
  readonly upper_mm: Triple;
}

/** The steering axis as a workshop measures it. */
export interface AnglesDocument {
  readonly inclination_deg: number;
  readonly caster_deg: number;
  readonly scrubRadius_mm: number;
  readonly trail_mm: number;
}

export interface WheelDocument {
  readonly centre_mm: Triple;
  /** 0 where left out, as is toe. */
  readonly camber_deg?: number;
  readonly toe_deg?: number;
  readonly loadedRadius_mm: number;
  /** The loaded radius where left out. */
  readonly rollingRadius_mm?: number;
}

export type ForceDocument =
  | { readonly case: 'brake-on-carrier'; readonly force_N: number }
  | { readonly case: 'shaft'; readonly force_N: number; readonly shaftDirection?: Triple }
  | { readonly case: 'impact'; readonly vector_N: Triple }
  | { readonly case: 'lateral'; readonly force_N: number; readonly pneumaticTrail_mm: number }
  | { readonly case: 'vertical'; readonly force_N: number };

export interface SteeringDocument {
  readonly outer_mm: Triple;
  readonly inner_mm: Triple;
  readonly travelPerTurn_mm: number;
  readonly rimDiameter_mm: number;
  /** 1 where left out. */
  readonly assist?: number;
}

export interface HubDocument {
  readonly loadLineOffset_mm: number;
  readonly spread_mm: number;
  readonly outboard: RowDocument;
  readonly inboard: RowDocument;
  readonly duty: readonly DutyDocument[];
}

export interface RowDocument {
  /** `roller` is a row of tapered rollers; `tapered` is read as another word for it. */
  readonly kind: RowKind;
  readonly C_N: number;
  readonly contactAngle_deg: number;
}

/** A kind of driving: its share of all revolutions, and the wheel's load in it. */
export interface DutyDocument {
  readonly share: number;
  readonly vertical_N: number;
  /** Positive toward the car, as on the outer wheel in a turn. */
  readonly inward_N: number;
}

/** Differences from the document's own values; what is left out does not change. */
export interface ChangeDocument {
  readonly spacer_mm?: number;
  readonly inset_mm?: number;
  readonly loadedRadius_mm?: number;
  readonly camberAtUpperPivot_deg?: number;
  readonly camberAtCarrier_deg?: number;
}
