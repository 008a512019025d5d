/** The balls of a radial or angular contact groove bearing. Lengths in metres. */
export interface BallSet {
  /** Number of rows i. */
  readonly rows: number;
  /** Balls in one row, Z. */
  readonly balls: number;
  /** D_w. */
  readonly ballDiameter: number;
  /** D_pw: diameter of the circle through the ball centres. */
  readonly pitchDiameter: number;
  /** α in radians, 0 to below π/2. */
  readonly contactAngle: number;
}

/** b_m: how much better today's steel is than that of the first tests (ISO 281, groove bearings). */
const MATERIAL = 1.3;

/**
 * Geometry factor f_c of a groove with radius 0.52 D_w, for the rating in newtons from millimetres:
 * 0.41·98.0665·0.95 {1 + [1.04((1 − γ)/(1 + γ))^1.72]^(10/3)}^−0.3
 * × γ^0.3 (1 − γ)^1.39/(1 + γ)^(1/3) (1.04/0.04)^0.41.
 *
 * @param slenderness γ = D_w cos α/D_pw, above 0 and up to 0.4
 * @throws RangeError outside that range
 *
 * Source: Lundberg and Palmgren; ISO/TR 1281-1 (from memory).
 */
export function geometryFactor(slenderness: number): number {
  if (!(slenderness > 0 && slenderness <= 0.4))
    throw new RangeError(`D_w cos α/D_pw of ${slenderness} is outside 0 to 0.4`);
  const inner = 1 - slenderness;
  const outer = 1 + slenderness;
  const rings = (1 + (1.04 * (inner / outer) ** 1.72) ** (10 / 3)) ** -0.3;
  const shape = (slenderness ** 0.3 * inner ** 1.39) / outer ** (1 / 3);
  const groove = (1.04 / 0.04) ** 0.41;
  return 0.41 * 98.0665 * 0.95 * rings * shape * groove;
}

/**
 * Basic dynamic radial load rating of balls in grooves, C = b_m f_c (i cos α)^0.7 Z^(2/3) D_w^1.8, in
 * newtons, with D_w in millimetres; above 25.4 mm 3.647 D_w^1.4 takes the place of D_w^1.8.
 *
 * Makers whose steel or grooves differ print other numbers, up to a tenth higher.
 *
 * @throws RangeError as `geometryFactor`
 *
 * Source: ISO 281:2007, 5.1 (from memory).
 */
export function ballRating(set: BallSet): number {
  const { rows, balls, ballDiameter, pitchDiameter, contactAngle } = set;
  const cosine = Math.cos(contactAngle);
  const diameter_mm = 1000 * ballDiameter;
  const size = diameter_mm <= 25.4 ? diameter_mm ** 1.8 : 3.647 * diameter_mm ** 1.4;
  const factor = geometryFactor((ballDiameter * cosine) / pitchDiameter);
  return MATERIAL * factor * (rows * cosine) ** 0.7 * balls ** (2 / 3) * size;
}
