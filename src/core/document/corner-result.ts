import type { Sense } from '../action.ts';
import type { ForceDocument, Triple } from './corner-document.ts';

/** What follows from a corner document. Members whose input is absent are absent; no number is rounded. */
export interface CornerResult {
  /** Straight ahead, with the change applied. */
  readonly geometry: GeometryResult;
  /** The same corner turned by the document's rotation. */
  readonly steered: SteeredResult;
  /** One for each force, in the steered position and of this corner alone. */
  readonly moments?: readonly MomentResult[];
  readonly hub?: HubResult;
}

export interface GeometryResult {
  readonly inclination_deg: number;
  readonly caster_deg: number;
  readonly includedAngle_deg: number;
  readonly scrubRadius_mm: number;
  readonly trail_mm: number;
  readonly spindleOffset_mm: number;
  readonly casterOffsetAtCentre_mm: number;
  /** Shortest distance from the wheel centre to the axis. */
  readonly axisDistance_mm: number;
  /** Where the axis meets the ground. */
  readonly groundPoint_mm: Triple;
  readonly contactCentre_mm: Triple;
}

export interface SteeredResult {
  /** Change of the wheel's heading, positive to the left. */
  readonly steer_deg: number;
  readonly camber_deg: number;
  readonly scrubRadius_mm: number;
  readonly trail_mm: number;
  readonly spindleOffset_mm: number;
  /** Positive where this corner of the car is raised. */
  readonly lift_mm: number;
  readonly contactCentre_mm: Triple;
  /** Positive to the left; only where the document has the steering. */
  readonly rackTravel_mm?: number;
}

export interface MomentResult {
  readonly case: ForceDocument['case'];
  /** About the steering axis, positive to the left. */
  readonly moment_Nm: number;
  readonly sense: Sense;
  /** Tension positive. This member and the next two only where the document has the steering. */
  readonly rod_N?: number;
  /** Of the rod on the rack, positive to the left. */
  readonly rack_N?: number;
  /** At the steering wheel, signed like the rack force. */
  readonly handwheel_Nm?: number;
}

export interface HubResult {
  readonly duty: readonly DutyResult[];
  readonly outboardL10_Mrev: number;
  readonly inboardL10_Mrev: number;
  readonly L10_Mrev: number;
  readonly L10_km: number;
  /** False where a row's mean equivalent load exceeds C/2: then the lives are no rating lives. */
  readonly withinScope: boolean;
}

export interface DutyResult {
  /** Negative where the row's loaded side has flipped. */
  readonly outboardRadial_N: number;
  readonly inboardRadial_N: number;
  readonly outboardThrust_N: number;
  readonly inboardThrust_N: number;
  readonly outboardEquivalent_N: number;
  readonly inboardEquivalent_N: number;
}
