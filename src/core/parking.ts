/**
 * Three estimates of the moment about the steering axis that turns one standing wheel on dry ground, all
 * in N·m and always positive. They differ by a tenth and more: none is exact, and the first two rest on
 * a friction value that hides most of the tyre. They leave out the lifting of the car and the friction
 * of the joints.
 */

/** The contact patch of a standing tyre. */
export interface Print {
  /** Width of the tyre's print, in metres, more than 0. */
  readonly width: number;
  /** Scrub radius, in metres; its sign does not matter. */
  readonly scrubRadius: number;
}

/**
 * Parking moment of a round print under even pressure, M = μ W √(B²/8 + r²): the print's radius of gyration
 * (B/√8) stands for its mean friction radius.
 *
 * @param load W on the wheel in newtons
 * @param friction μ, up to 0.7 on dry concrete; makers lower it as r/B grows, since the wheel rolls
 *
 * Source: Eaton Char-Lynn Steering Catalog C-STOV-MC001-E1 (2006), p. 90.
 */
export const parkingMomentByGyration = (
  load: number,
  friction: number,
  { width, scrubRadius }: Print,
): number => friction * load * Math.sqrt(width ** 2 / 8 + scrubRadius ** 2);

/**
 * Parking moment with a third of the print's width as its mean friction radius, M = μ W √((a/3)² + d²).
 *
 * @param load W on the wheel in newtons
 * @param friction μ, an effective value read from a chart over d/a: 0.55 to 0.58 for d/a = 0.1
 *
 * Source: Barton and Fieldhouse, Automotive Chassis Engineering (2018), example E2.1, p. 82.
 */
export const parkingMomentByThirds = (
  load: number,
  friction: number,
  { width, scrubRadius }: Print,
): number => friction * load * Math.hypot(width / 3, scrubRadius);

/**
 * Parking moment from the inflation pressure alone, M = (μ/3) √(W³/p): an empirical formula that knows
 * neither the print's width nor the scrub radius.
 *
 * @param load W on the wheel in newtons
 * @param friction μ, 0.7 on dry ground
 * @param pressure p in pascals above the air's, more than 0
 *
 * Source: V. E. Gough, as discussed by Sharp and Granger (2003) on steering torques at parking
 * speeds (formula from memory).
 */
export const parkingMomentByPressure = (load: number, friction: number, pressure: number): number =>
  (friction / 3) * Math.sqrt(load ** 3 / pressure);

/** The most that the sources give for the friction of a standing tyre on dry concrete (Eaton, as above). */
export const DRY_CONCRETE = 0.7;

/** A standing wheel as the three estimates need it: newtons, pascals, metres. */
export interface Parked {
  readonly load: number;
  readonly friction: number;
  readonly pressure: number;
  readonly print: Print;
}

/** The three estimates side by side, in N·m, by the names of their quantities. */
export const parkingEstimates = ({ load, friction, pressure, print }: Parked) => ({
  parkingByGyration: parkingMomentByGyration(load, friction, print),
  parkingByThirds: parkingMomentByThirds(load, friction, print),
  parkingByPressure: parkingMomentByPressure(load, friction, pressure),
});
