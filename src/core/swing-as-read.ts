import type { BrakedSwingReading, Swing } from './swing.ts';

/**
 * A swing as gauges with a scale show it: camber and pitch to the nearest division. The turns stay as
 * they are, since they are set and not read.
 *
 * @param division of the gauges in radians, above 0
 * @throws RangeError for another division
 */
export function asRead(
  { turnedIn, ahead, turnedOut }: Swing<BrakedSwingReading>,
  division: number,
): Swing<BrakedSwingReading> {
  if (!(division > 0)) throw new RangeError(`division is ${division} rad; allowed: above 0`);
  const read = (angle: number): number => Math.round(angle / division) * division;
  const shown = ({ turn, camber, pitch }: BrakedSwingReading): BrakedSwingReading => ({
    turn,
    camber: read(camber),
    pitch: read(pitch),
  });
  return { turnedIn: shown(turnedIn), ahead: shown(ahead), turnedOut: shown(turnedOut) };
}
