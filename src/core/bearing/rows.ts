/** One value for each of the two rows of a hub bearing. */
export interface Rows<Value> {
  readonly outboard: Value;
  readonly inboard: Value;
}

/**
 * How the wheel sits over the two rows, along the spin axis, in metres. The rows' mid-plane is halfway
 * between their pressure centres.
 */
export interface RowSpacing {
  /** Load-line offset x: how far the wheel-centre plane lies outboard of the rows' mid-plane. */
  readonly loadLineOffset: number;
  /** Pressure-centre spread a: from one row's pressure centre to the other's. More than 0. */
  readonly spread: number;
}

/** What the ground does to the tyre, in newtons. */
export interface WheelLoad {
  /** Wheel load F_z, upward. */
  readonly vertical: number;
  /** Lateral force F_in, positive toward the car, as on the outer wheel in a turn. */
  readonly inward: number;
}

/**
 * Radial loads of the two rows, from the balance of moments about the other row's pressure centre:
 * outboard F_z/2 + (x F_z − R F_in)/a, inboard F_z/2 − (x F_z − R F_in)/a, in newtons.
 *
 * A positive load is directed like the wheel load. A negative one means that the row's loaded side has
 * flipped; its magnitude counts for life. Camber is taken as small: the spin axis is level.
 *
 * @param loadedRadius R in metres, more than 0
 *
 * Source: statics of a beam on two supports.
 */
export function radialLoads(
  { loadLineOffset, spread }: RowSpacing,
  load: WheelLoad,
  loadedRadius: number,
): Rows<number> {
  const half = load.vertical / 2;
  const couple = tiltingMoment({ loadLineOffset }, load, loadedRadius) / spread;
  return { outboard: half + couple, inboard: half - couple };
}

/**
 * Moment of the tyre force about the middle between the pressure centres, x F_z − R F_in, in N·m: positive
 * when it tips the top of the wheel inboard and so loads the outboard row. The rows hold it as a couple.
 *
 * @param loadedRadius R in metres, more than 0
 *
 * Source: statics.
 */
export const tiltingMoment = (
  { loadLineOffset }: Pick<RowSpacing, 'loadLineOffset'>,
  { vertical, inward }: WheelLoad,
  loadedRadius: number,
): number => loadLineOffset * vertical - loadedRadius * inward;

/**
 * Where the line of action of the tyre force crosses the spin axis: x − R F_in/F_z, in metres outboard
 * of the mid-plane. Between −a/2 and +a/2 both rows are loaded the same way.
 *
 * @param loadedRadius R in metres, more than 0
 * @throws RangeError for a wheel load that is not more than 0: a lifted wheel has no such line
 */
export function loadLineCrossing(
  { loadLineOffset }: Pick<RowSpacing, 'loadLineOffset'>,
  { vertical, inward }: WheelLoad,
  loadedRadius: number,
): number {
  if (!(vertical > 0)) throw new RangeError(`a wheel load of ${vertical} N is not more than 0`);
  return loadLineOffset - (loadedRadius * inward) / vertical;
}

/**
 * The row whose loaded side has flipped, from the signed radial loads under a wheel load of 0 or more;
 * none while the line of action passes between the pressure centres.
 */
export function flippedRow({ outboard, inboard }: Rows<number>): keyof Rows<number> | undefined {
  if (outboard < 0) return 'outboard';
  if (inboard < 0) return 'inboard';
  return undefined;
}
