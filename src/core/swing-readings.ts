import { downInWheelPlane, heading, outboardSign, type Corner } from './corner.ts';
import { camberOf } from './geometry.ts';
import { rotation, turned } from './rotation.ts';
import { rotationForSteer, steered } from './steering.ts';
import type { BrakedSwingReading, Swing } from './swing.ts';
import { dot } from './vector.ts';

/**
 * What a workshop's gauges would show when a corner's wheel, braked, is turned on its plate from
 * straight ahead by an angle in and by the same angle out. The gauge for the pitch is set to zero
 * straight ahead.
 *
 * @param corner straight ahead
 * @param turn change of heading each way, in radians, above 0 and up to 60°
 * @throws RangeError where no rotation about the axis turns the wheel so far
 */
export function swingReadings(corner: Corner, turn: number): Swing<BrakedSwingReading> {
  const steer = outboardSign(corner.side) * turn;
  return {
    turnedIn: readingAfter(corner, rotationForSteer(corner, -steer)),
    ahead: readingAfter(corner, 0),
    turnedOut: readingAfter(corner, rotationForSteer(corner, steer)),
  };
}

/** The readings after a rotation about the steering axis by `angle`, radians, positive to the left. */
export function readingAfter(corner: Corner, angle: number): BrakedSwingReading {
  const now = steered(corner, angle);
  const ahead = heading(now);
  const mark = turned(heading(corner), rotation(corner.axis.direction, angle));
  return {
    turn: Math.atan2(outboardSign(corner.side) * ahead.y, ahead.x),
    camber: camberOf(now.spin),
    pitch: Math.atan2(-dot(mark, downInWheelPlane(now.spin)), dot(mark, ahead)),
  };
}
