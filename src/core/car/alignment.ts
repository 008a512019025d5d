/** What is allowed of an angle, in radians, both ends included. */
export interface Band {
  readonly least: number;
  readonly most: number;
}

/** What is allowed of an angle on each wheel, and of the difference between the two. */
export interface PairBand extends Band {
  /** Largest difference between left and right, whichever is the larger. */
  readonly difference: number;
}

/** What a car’s maker allows its front wheels: the numbers that an alignment sheet is held against. */
export interface Alignment {
  readonly camber: PairBand;
  readonly caster: PairBand;
  readonly inclination: PairBand;
  readonly includedAngle: PairBand;
  /** Of one wheel; both together may have twice as much. */
  readonly toe: Band;
}
