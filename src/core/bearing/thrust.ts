import type { LoadFactors } from './factors.ts';
import type { Rows } from './rows.ts';

/**
 * Induced thrust of a row, S = F_r/(2Y), in newtons: a radial load alone spreads the rings of a row with
 * a contact angle.
 *
 * @param radial F_r in newtons; its sign does not matter
 *
 * Source: makers' catalogues, for angular contact balls (SKF) and tapered rollers (LYC) alike. NSK's
 * handbook has 0.6 F_r/Y instead of 0.5 F_r/Y (from memory).
 */
export const inducedThrust = (radial: number, { Y }: Pick<LoadFactors, 'Y'>): number =>
  Math.abs(radial) / (2 * Y);

/**
 * Thrusts of two rows back to back, in newtons: outboard max(S_out, S_in + F_in), inboard
 * max(S_in, S_out − F_in).
 *
 * These are the least thrusts that differ by the lateral force and leave neither row below its induced
 * thrust. Catalogues tell the same as cases: with A the row that takes the outer thrust K = |F_in| and
 * B the other, F_aA = S_B + K and F_aB = S_B if S_B + K ≥ S_A, else F_aA = S_A and F_aB = S_A − K. The
 * outboard row is A while the tyre is pushed inboard, the inboard row while it is pulled outboard.
 *
 * Holds for a hub whose inner rings turn with the wheel, set to no clearance and no preload. Where the
 * outer ring turns with the wheel (a hub on a fixed spindle), the other row takes the thrust: pass −F_in.
 *
 * @param induced S of each row in newtons, 0 or more
 * @param inward F_in in newtons, positive toward the car
 *
 * Source: SKF, Rolling bearings, Table 11, axial loading of arrangements with two single row angular
 * contact ball bearings, cases 1a to 2c.
 */
export const rowThrusts = (induced: Rows<number>, inward: number): Rows<number> => ({
  outboard: Math.max(induced.outboard, induced.inboard + inward),
  inboard: Math.max(induced.inboard, induced.outboard - inward),
});
