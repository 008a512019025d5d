import { radians } from './angle.ts';
import { downInWheelPlane, heading, spinAxis } from './corner.ts';
import { failure, success, type Fault, type Outcome } from './fault.ts';
import { along, cross, length, minus, times, type Vector } from './vector.ts';
import { writeDegrees } from './write-number.ts';

/**
 * What the gauges show in one position of a wheel that stands on a turn plate. Angles in radians, and
 * the same signs on both sides of the car.
 */
export interface SwingReading {
  /**
   * Heading of the wheel from the car's forward direction: positive when the wheel is turned *out* (its
   * front edge outboard: a left wheel to the left, a right wheel to the right), negative when turned
   * *in*. Straight ahead it is the toe with the other sign.
   */
  readonly turn: number;
  /** Camber γ: positive when the wheel's top leans outboard. */
  readonly camber: number;
}

/** The same with the brake applied, so that the wheel turns with the carrier about the steering axis. */
export interface BrakedSwingReading extends SwingReading {
  /**
   * How far the wheel has rolled on its own axis against the level, seen on a gauge across the wheel's
   * face: positive when its front edge has gone up. Where the gauge was set to zero does not matter.
   */
  readonly pitch: number;
}

export interface Swing<Reading> {
  readonly turnedIn: Reading;
  readonly ahead: Reading;
  readonly turnedOut: Reading;
}

/** The lean of the steering axis: caster τ (top rearward) and inclination σ (top inboard), radians. */
export interface AxisAngles {
  readonly caster: number;
  readonly inclination: number;
}

const LARGEST_TURN = radians(60);
const LEAST_TURN_BETWEEN = radians(2);
const LARGEST_LEAN = radians(30);
const LARGEST_AXIS_LEAN = radians(60);

/**
 * Caster and inclination from camber read at three positions: exact for a rigid carrier.
 *
 * The spin axis s turns about the steering axis u, so u·s is the same in all positions and u stands
 * upright on both changes of s: u ∝ (s_in − s_ahead) × (s_out − s_ahead), with
 * s = (−cos γ sin δ, cos γ cos δ, −sin γ) at the turn δ, outboard to the left.
 *
 * The caster comes out well. The inclination rests on 1 − cos δ, 0.06 at 20°: a camber read 0.1° wrong
 * puts it more than a degree wrong, so a workshop takes `axisFromBrakedSwing` for it.
 *
 * @param swing each turn at least 2° from the next, none beyond ±60°, cambers within ±30°
 * @returns the angles, or faults with the paths `turnedIn.turn` and so on
 * Source: own derivation.
 */
export function axisFromCamberSwing(swing: Swing<SwingReading>): Outcome<AxisAngles> {
  const faults = swingFaults(swing);
  if (faults.length > 0) return failure(...faults);
  return axisKeeping(swing, spinOf);
}

/**
 * Caster and inclination from a swing with the brake applied, by the wheel's pitch: exact for a rigid
 * carrier. The same as above for a direction e in the wheel plane that was level at pitch zero:
 * e = e_x cos φ + w sin φ, with the wheel's heading e_x, the upward direction w in the wheel plane and
 * the pitch φ. Here the inclination comes out well, and the caster rests on 1 − cos δ.
 *
 * @param swing as above, pitches within ±30°
 * @returns the angles, or faults with the paths `turnedIn.pitch` and so on
 * Source: own derivation.
 */
export function axisFromBrakedSwing(swing: Swing<BrakedSwingReading>): Outcome<AxisAngles> {
  const faults = [
    ...swingFaults(swing),
    ...POSITIONS.flatMap((position) => leanFault(`${position}.pitch`, swing[position].pitch)),
  ];
  if (faults.length > 0) return failure(...faults);
  return axisKeeping(swing, markOf);
}

const POSITIONS = ['turnedIn', 'ahead', 'turnedOut'] as const;

// A right wheel is the mirror image of a left one, and the readings do not tell them apart.
const spinOf = ({ turn, camber }: SwingReading): Vector => spinAxis('left', camber, -turn);

function markOf(reading: BrakedSwingReading): Vector {
  const spin = spinOf(reading);
  const ahead = heading({ side: 'left', spin });
  const { pitch } = reading;
  return along(times(Math.cos(pitch), ahead), -Math.sin(pitch), downInWheelPlane(spin));
}

function axisKeeping<Reading>(
  { turnedIn, ahead, turnedOut }: Swing<Reading>,
  directionOf: (reading: Reading) => Vector,
): Outcome<AxisAngles> {
  const middle = directionOf(ahead);
  const axis = cross(minus(directionOf(turnedIn), middle), minus(directionOf(turnedOut), middle));
  // Also refuses NaN, from readings that let no direction change.
  if (!(Math.abs(axis.z) > Math.cos(LARGEST_AXIS_LEAN) * length(axis))) {
    const wrong = 'fit no steering axis within 60° of upright';
    return failure({ path: '', wrong, allowed: 'readings of one wheel on level plates' });
  }
  return success({
    caster: Math.atan(-axis.x / axis.z),
    inclination: Math.atan(-axis.y / axis.z),
  });
}

function swingFaults(swing: Swing<SwingReading>): readonly Fault[] {
  const { turnedIn, ahead, turnedOut } = swing;
  return [
    ...POSITIONS.flatMap((position) => [
      ...turnFault(`${position}.turn`, swing[position].turn),
      ...leanFault(`${position}.camber`, swing[position].camber),
    ]),
    ...orderFault('turnedIn.turn', ahead.turn - turnedIn.turn, 'in from straight ahead'),
    ...orderFault('turnedOut.turn', turnedOut.turn - ahead.turn, 'out from straight ahead'),
  ];
}

function turnFault(path: string, turn: number): readonly Fault[] {
  if (Math.abs(turn) <= LARGEST_TURN) return [];
  return [{ path, wrong: `is ${written(turn)}`, allowed: 'from −60° to 60°' }];
}

function leanFault(path: string, lean: number): readonly Fault[] {
  if (Math.abs(lean) <= LARGEST_LEAN) return [];
  return [{ path, wrong: `is ${written(lean)}`, allowed: 'from −30° to 30°' }];
}

function orderFault(path: string, apart: number, way: string): readonly Fault[] {
  // NaN has its own fault above.
  if (!(apart < LEAST_TURN_BETWEEN)) return [];
  return [{ path, wrong: `is ${written(apart)} ${way}`, allowed: `at least 2° ${way}` }];
}

const written = (angle: number): string =>
  Number.isFinite(angle) ? writeDegrees(angle, 2) : 'no number';
