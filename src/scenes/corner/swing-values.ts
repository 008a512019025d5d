import { radians } from '#core/angle.ts';
import type { Corner } from '#core/corner.ts';
import type { SwingQuantity } from '#core/swing-quantities.ts';
import { asRead } from '#core/swing-as-read.ts';
import {
  casterBySwing,
  inclinationBySwing,
  swingFactor,
  TRADE_FACTOR,
} from '#core/swing-by-rule.ts';
import { swingReadings } from '#core/swing-readings.ts';
import {
  axisFromCamberSwing,
  type AxisAngles,
  type BrakedSwingReading,
  type Swing,
} from '#core/swing.ts';

/** How far the wheel is turned on its plate, in and out, and what the gauges are divided into. */
export const SWING_TURN = radians(20);
const DIVISION = radians(0.1);

export const SWING_FACTOR = swingFactor(SWING_TURN);

/** What somebody with turn plates and gauges reads off a corner. */
export const swingOf = (ahead: Corner): Swing<BrakedSwingReading> =>
  asRead(swingReadings(ahead, SWING_TURN), DIVISION);

/** What comes out of those readings, in radians: somebody with a pocket calculator gets the same. */
export function bySwing(id: SwingQuantity, ahead: Corner): number {
  const swing = swingOf(ahead);
  const { turnedIn, turnedOut } = swing;
  switch (id) {
    case 'casterBySwing':
      return casterBySwing(turnedOut.camber, turnedIn.camber, SWING_FACTOR);
    case 'casterByTradeFactor':
      return casterBySwing(turnedOut.camber, turnedIn.camber, TRADE_FACTOR);
    case 'inclinationBySwing':
      return inclinationBySwing(turnedOut.pitch, turnedIn.pitch, SWING_FACTOR);
    case 'casterFromReadings':
      return axisOf(swing).caster;
    case 'inclinationFromReadings':
      return axisOf(swing).inclination;
  }
}

/** The axis that the three cambers belong to. */
function axisOf(swing: Swing<BrakedSwingReading>): AxisAngles {
  const axis = axisFromCamberSwing(swing);
  if (axis.ok) return axis.value;
  throw new RangeError('no axis fits the cambers read off this corner');
}
