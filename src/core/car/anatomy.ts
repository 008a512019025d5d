/** Sizes of a car's parts as they are drawn, in millimetres and (the contact angle) radians. */
export interface Anatomy {
  readonly suspension: 'strut' | 'double-arm';
  readonly tyreWidth: number;
  /** Half the outer diameter of the unloaded tyre. */
  readonly tyreRadius: number;
  readonly rimRadius: number;
  readonly rimWidth: number;
  /** Hub face outboard of the wheel's centre plane: the inset of the car's own wheel. */
  readonly inset: number;
  /** Wheel-centre plane outboard of the bearing's mid-plane, with the car's own wheel. */
  readonly loadLineOffset: number;
  /** Between the pressure centres of the two rows. */
  readonly spread: number;
  readonly contactAngle: number;
  /** Of the circle that the centres of a row's balls or rollers run on. */
  readonly pitchDiameter: number;
}
